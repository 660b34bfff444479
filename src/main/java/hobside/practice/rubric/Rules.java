package hobside.practice.rubric;

import hobside.guide.GuideBook;

/**
 * What answers are held against, in one language.
 *
 * @param concepts the phrases that are looked for
 * @param plain how plain words are measured
 * @param book the published figures of the truth check
 */
public record Rules(Concepts concepts, hobside.talk.plain.Rules plain, GuideBook book) {}

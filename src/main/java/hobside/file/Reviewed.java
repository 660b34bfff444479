package hobside.file;

import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.check.Facts;
import hobside.talk.check.Finding;
import hobside.talk.check.Place;
import hobside.talk.check.TruthCheck;
import hobside.talk.plain.Report;
import hobside.talk.plain.Sayability;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole talk looked through: what the figures and the published rules do not bear out, and how easy it is to say.
 *
 * @param checked whether its sentences could be checked at all: the check reads English
 */
public record Reviewed(List<Remark> remarks, Report report, boolean checked) {

    /** A finding, and the cue and section it is in; a caution that is not said stands in the last section, without a cue. */
    public record Remark(Talk.Section section, String kind, Finding finding) {}

    public Reviewed {
        remarks = List.copyOf(remarks);
    }

    /** A gap that nothing fills would be printed as it was typed. */
    private static Finding unknown(String gap) {
        String typed = "{" + gap + "}";
        return new Finding(Finding.Kind.NUMBER, 0, typed.length(), typed, "It is no live figure of this place, and would be read out as it stands.",
                "the ledger of this demo", "choose one with Ctrl-F while writing, or write the words out");
    }

    public static Reviewed of(Demo demo, Study study) {
        Stand stand = Scripts.stand(demo, study);
        Talk talk = TalkWriter.write(stand);
        TruthCheck check = TruthCheck.of(Facts.of(stand, study.published()));
        List<Remark> remarks = new ArrayList<>();
        if (stand.isEnglish()) {
            talk.sections().forEach(section -> section.cues().forEach(cue -> check.check(cue.words(), Place.of(section, stand.ledger()))
                    .forEach(finding -> remarks.add(new Remark(section, cue.kind().word(), finding)))));
        }
        talk.sections().forEach(section -> section.cues().forEach(cue -> Words.gaps(cue.words()).forEach(gap -> remarks.add(new Remark(section, cue.kind().word(), unknown(gap))))));
        Talk.Section last = talk.sections().get(talk.sections().size() - 1);
        check.missing(talk.cues()).forEach(finding -> remarks.add(new Remark(last, Cue.Kind.TAKE_CARE.word(), finding)));
        List<String> spoken = talk.cues().stream().filter(cue -> cue.kind().isSpoken()).map(Cue::words).toList();
        return new Reviewed(remarks, Sayability.of(spoken, study.rules(demo.script())), stand.isEnglish());
    }
}

package hobside.screen.desk;

import hobside.file.Practices;
import hobside.file.PriceFile;
import hobside.file.Slates;
import hobside.food.Food;
import hobside.practice.WorkshopSet;
import hobside.screen.Effect;
import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.util.Optional;

/** The work that screens ask of the disk. Each is answered by a message of {@link Answer}. */
public sealed interface Work extends Effect {

    /** Put the working copy away after a change; quick, and done after every change. */
    record Keep(Demo demo, String name) implements Work {}

    /** Save the demo and write its printed forms. */
    record Save(Demo demo, String name) implements Work {}

    /** Look whether something was being typed on this demo when the program was stopped. Answered with {@link Answer.Left} if so. */
    record LookForTyped(String demo, String dish) implements Work {}

    /** What was left half typed is gone on with: from now on it is noted in the same place. Not answered. */
    record TypeOn(Slates.Left left) implements Work {}

    /** What was left half typed is thrown away. Not answered. */
    record ForgetTyped(Slates.Left left) implements Work {}

    /** List what can be opened. */
    record Look() implements Work {}

    /** Open one of what was listed. */
    record Open(Answer.Choice choice) implements Work {}

    /** Something to do with the user's own foods and prices; answered with what the program knows from then on. */
    sealed interface Stock extends Work {}

    /** Put an own food on the shelf, new or in place of its older record. */
    record PutFood(Food food, Optional<Food> instead) implements Stock {}

    /** Take an own food off the shelf. */
    record DeleteFood(Food food) implements Stock {}

    /** Put a price list of the user's on the disk; one without a date gets today's. */
    record PutPrices(PriceFile list) implements Stock {}

    /** Delete a price list of the user's. */
    record DeletePrices(PriceFile list) implements Stock {}

    /** Reckon with another price list from now on. */
    record UsePrices(PriceFile list) implements Stock {}

    /** Something to do with the runs of a talk. The disk side has the clock: it says when a run began and when something happened. */
    sealed interface Running extends Work {}

    /** Begin a run; the time in the head does not matter. Answered with {@link Answer.Begun}. */
    record Begin(Run.Head head) implements Running {}

    /** Something happened in the run that has begun. Answered with {@link Answer.Happened}. */
    record Happened(Happening.What what, String cue, String text) implements Running {}

    /** Read the runs of a demo, given the name of its file. Answered with {@link Answer.Runs}. */
    record Runs(String demo) implements Running {}

    /** Look whether a live run was broken off. Answered with {@link Answer.BrokenOff}. */
    record LookBack() implements Running {}

    /** Go on with the live run that was broken off. Answered with {@link Answer.Begun}, or {@link Answer.Failed} if there is none. */
    record Resume() implements Running {}

    /** The user leaves the live run and can go on with it later. Not answered. */
    record LeaveTalk() implements Work {}

    /** The live run that was broken off is over. Answered with {@link Answer.BrokenOff}, empty. */
    record LetGo() implements Running {}

    /** Put the run that has just ended away: it does not count any more. Answered with {@link Answer.Runs}, those that are left. */
    record PutAway(String demo) implements Running {}

    /** Something to do with practice. The disk side has the clock. Answered with {@link Answer.Practised} unless it is said otherwise. */
    sealed interface Practising extends Work {}

    /** Look what was practised, what is prepared, and which dishes there are. */
    record LookAtPractice() implements Practising {}

    /** An exercise was done. Answered with {@link Answer.Logged}. */
    record Done(String trainee, Practices.Done done) implements Practising {}

    /** A person has set a mark. Answered with {@link Answer.Logged}. */
    record Ruled(String trainee, Practices.Ruled ruled) implements Practising {}

    /** Erase a trainee and everything that was logged of that nickname. */
    record Erase(String trainee) implements Practising {}

    /** Copy the logs of a folder into the kitchen. */
    record GatherFrom(String folder) implements Practising {}

    /** Keep a prepared set. */
    record PutSet(WorkshopSet set) implements Practising {}

    /** Write the report of the workshop as text, as a table and as a page to print, in this language. */
    record WriteReport(String language) implements Practising {}
}

package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Skim;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.file.Scripts;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Stand;
import hobside.talk.Talk;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stands on the papers of the rib pot for 8, part by part. */
class PaperPartsTest {

    private static final Demo POT = Bundle.demo("ropewalk-rib-pot");

    private static Demo pot(Change... changes) {
        return POT.with(Plan.of(changes));
    }

    private static Stream<Block> under(Sheet sheet, String heading) {
        List<Block> blocks = sheet.blocks();
        int at = blocks.indexOf(new Block.Heading(heading));
        return blocks.subList(at + 1, blocks.size()).stream().takeWhile(block -> !(block instanceof Block.Heading));
    }

    private static Block first(Sheet sheet, String heading) {
        return under(sheet, heading).findFirst().orElseThrow();
    }

    private static Sheet bench(Demo demo) {
        return Papers.sheet(Scripts.Paper.BENCH, demo);
    }

    private static Sheet handout(Demo demo) {
        return Papers.sheet(Scripts.Paper.HANDOUT, demo);
    }

    private static List<String> ahead(Demo demo) {
        return ((Block.Checks) first(bench(demo), "To do ahead")).items();
    }

    @Test
    void a_dish_as_ever_is_prepared_and_cooked_once_before() {
        assertEquals(List.of("Peel and slice the onions, crush the garlic, cut the carrots and the cabbage. Rinse the barley. (About 15 minutes.)", "Have the same dish cooked and ready, to show and to taste."), ahead(POT));
    }

    @Test
    void a_pot_that_is_skimmed_is_cooked_the_day_before() {
        assertTrue(ahead(pot(new Skim(Taken.TYPICAL))).contains("Cook the dish the day before and chill it, for the fat to set on top."));
        assertFalse(ahead(pot(new Trim("ribs", Taken.TYPICAL))).contains("Cook the dish the day before and chill it, for the fat to set on top."));
    }

    @Test
    void equipment_and_props_are_named_once() {
        Sheet sheet = bench(pot(new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL)));
        for (String heading : List.of("Equipment", "To show")) {
            List<String> items = ((Block.Checks) first(sheet, heading)).items();
            assertFalse(items.isEmpty(), heading);
            assertEquals(items.stream().distinct().toList(), items, heading);
        }
        assertTrue(((Block.Checks) first(sheet, "Equipment")).items().contains("a sharp knife and a board"));
    }

    /** Raw meat: 62.8 °C and three minutes' rest (United States), 70 °C for two minutes (United Kingdom), as on the card of cautions. */
    @Test
    void the_temperatures_are_told_from_the_lowest_to_the_highest() {
        List<Block> blocks = under(bench(POT), "Temperatures to reach").toList();
        List<String> raw = ((Block.Table) blocks.get(0)).rows().get(0);
        assertTrue(raw.get(0).equals("raw meat") && raw.get(1).startsWith("62.8 °C") && raw.get(2).startsWith("70 °C"), raw.toString());
        assertEquals(new Block.Paragraph("Your local rule decides. Have a thermometer at hand."), blocks.get(1));
    }

    @Test
    void the_allergen_card_tells_of_now_of_before_and_of_what_is_gone() {
        Block.Box card = card(pot(new LeaveOut("barley")));
        assertEquals("In the dish as it is cooked here: barley (gluten).", card.lines().get(1));
        assertTrue(card.lines().get(2).startsWith("No longer among the ingredients: barley (gluten)."), card.lines().toString());
        assertEquals(4, card.lines().size());
        assertEquals(3, card(POT).lines().size());
    }

    private static Block.Box card(Demo demo) {
        return (Block.Box) first(bench(demo), "Allergen card");
    }

    @Test
    void the_card_begins_a_page_of_its_own() {
        List<Block> blocks = bench(POT).blocks();
        assertEquals(new Block.PageBreak(), blocks.get(blocks.indexOf(new Block.Heading("Allergen card")) - 1));
        assertEquals(1, blocks.stream().filter(Block.PageBreak.class::isInstance).count());
    }

    @Test
    void every_part_but_the_bench_is_timed_and_the_last_row_is_their_sum() {
        Demo demo = pot(new Trim("ribs", Taken.TYPICAL));
        Talk talk = Scripts.talk(demo, Bundle.STUDY);
        List<List<String>> rows = ((Block.Table) first(bench(demo), "Who does what, and how long it takes")).rows();
        List<Talk.Section> timed = talk.sections().stream().filter(section -> section.part() != Talk.Part.BENCH).toList();
        assertEquals(timed.size() + 1, rows.size());
        long speaking = 0;
        long hands = 0;
        for (int i = 0; i < timed.size(); i++) {
            assertEquals(timed.get(i).heading(), rows.get(i).get(0));
            assertEquals("presenter", rows.get(i).get(1));
            speaking += seconds(rows.get(i).get(2));
            hands += seconds(rows.get(i).get(3));
        }
        List<String> all = rows.get(timed.size());
        assertEquals("in all", all.get(0));
        assertTrue(Math.abs(speaking - seconds(all.get(2))) <= 5L * timed.size(), "speaking: " + speaking);
        assertTrue(Math.abs(hands - seconds(all.get(3))) <= 5L * timed.size(), "hands: " + hands);
        assertTrue(seconds(all.get(2)) > 120 && seconds(all.get(3)) > 120);
    }

    private static long seconds(String minutes) {
        return Long.parseLong(minutes.split(":")[0]) * 60 + Long.parseLong(minutes.split(":")[1]);
    }

    /** 18 words a section of a talk of our own at 108 words a minute are 10 seconds; 130 seconds of work are 2:10. */
    @Test
    void times_are_told_in_minutes_to_ten_seconds() {
        Stand stand = Scripts.stand(POT.with(POT.script().with(new Script.Pacing(108, 0))), Bundle.STUDY);
        Cue cue = new Cue("own:1", Cue.Kind.SAY, new Cue.Text("so ".repeat(18).strip(), "so ".repeat(18).strip()), Cue.Details.SPOKEN.taking(130));
        Talk.Section section = Scripts.talk(POT, Bundle.STUDY).sections().get(0);
        Talk talk = new Talk(Scripts.talk(POT, Bundle.STUDY).front(), List.of(new Talk.Section(section.head(), List.of(cue), Optional.empty(), section.figures())));
        List<String> row = ((Block.Table) new Times(talk, stand).blocks().get(0)).rows().get(0);
        assertEquals(List.of("0:10", "2:10"), row.subList(2, 4));
    }

    @Test
    void the_script_begins_a_page_with_each_change_and_ends_with_the_chart() {
        Sheet sheet = Papers.sheet(Scripts.Paper.SCRIPT, pot(new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL)));
        assertEquals(3, sheet.blocks().stream().filter(Block.PageBreak.class::isInstance).count(), "two changes and the look back");
        List<Block.Chart> charts = sheet.blocks().stream().filter(Block.Chart.class::isInstance).map(Block.Chart.class::cast).toList();
        assertEquals(1, charts.size());
        assertEquals(List.of("At the start", "After change 1", "After change 2"), charts.get(0).points().stream().map(Block.Chart.Point::label).toList());
        assertTrue(charts.get(0).points().get(0).figure().typical().startsWith("28.9"), charts.get(0).points().get(0).figure().typical());
        assertEquals(4, sheet.blocks().stream().filter(Block.Board.class::isInstance).count(), "the welcome, two changes and the look back");
        assertTrue(Papers.sheet(Scripts.Paper.SCRIPT, POT).blocks().stream().noneMatch(Block.Chart.class::isInstance), "nothing is changed, so nothing is drawn");
    }

    @Test
    void what_is_set_out_is_ticked_off_and_a_caution_there_is_told() {
        Sheet sheet = Papers.sheet(Scripts.Paper.SCRIPT, POT);
        Talk.Section bench = Scripts.talk(POT, Bundle.STUDY).sections().stream().filter(section -> section.part() == Talk.Part.BENCH).findFirst().orElseThrow();
        List<Block> blocks = under(sheet, bench.heading()).toList();
        List<String> ticks = blocks.stream().filter(Block.Checks.class::isInstance).flatMap(block -> ((Block.Checks) block).items().stream()).toList();
        assertEquals(bench.cues().stream().filter(cue -> cue.kind() != Cue.Kind.TAKE_CARE).map(Cue::words).toList(), ticks);
        List<String> told = blocks.stream().filter(Block.CueLine.class::isInstance).map(block -> ((Block.CueLine) block).words()).toList();
        assertEquals(bench.cues().stream().filter(cue -> cue.kind() == Cue.Kind.TAKE_CARE).map(Cue::words).toList(), told);
        assertFalse(told.isEmpty());
    }

    @Test
    void a_section_that_may_all_be_left_out_says_so_once() {
        Sheet sheet = Papers.sheet(Scripts.Paper.SCRIPT, POT);
        List<Block> may = sheet.blocks().stream().filter(new Block.Paragraph("All of this may be left out.")::equals).toList();
        long sections = Scripts.talk(POT, Bundle.STUDY).sections().stream().filter(section -> !section.cues().isEmpty() && section.cues().stream().noneMatch(cue -> cue.details().must())).count();
        assertEquals(sections, may.size());
        assertTrue(sections > 0);
        for (Talk.Section section : Scripts.talk(POT, Bundle.STUDY).sections()) {
            if (section.cues().stream().noneMatch(cue -> cue.details().must())) {
                assertTrue(under(sheet, section.heading()).filter(Block.CueLine.class::isInstance).allMatch(block -> ((Block.CueLine) block).remark().isEmpty()), section.heading());
            }
        }
    }

    @Test
    void a_cue_of_the_helper_is_marked_as_theirs() {
        Talk talk = Scripts.talk(POT, Bundle.STUDY);
        Talk.Section section = talk.sections().get(0);
        Cue cue = new Cue("own:1", Cue.Kind.DO, new Cue.Text("Stir.", "Stir."), Cue.Details.SPOKEN.by(Cue.Who.HELPER));
        Cue may = new Cue("own:2", Cue.Kind.DO, new Cue.Text("Pour.", "Pour."), Cue.Details.SPOKEN.by(Cue.Who.HELPER).may());
        Sheet sheet = ScriptSheet.of(new Talk(talk.front(), List.of(new Talk.Section(section.head(), List.of(cue, may), Optional.empty(), section.figures()))), Scripts.stand(POT, Bundle.STUDY));
        List<String> remarks = sheet.blocks().stream().filter(Block.CueLine.class::isInstance).map(block -> ((Block.CueLine) block).remark()).toList();
        assertEquals(List.of("helper", "helper, may be left out"), remarks);
    }

    @Test
    void the_handout_tells_each_change_and_for_how_many_to_buy() {
        Sheet sheet = handout(pot(new Trim("ribs", Taken.TYPICAL), new MorePeople(4)));
        assertEquals(2, ((Block.Lines) first(sheet, "How to do it at home")).items().size());
        assertTrue(((Block.Lines) first(sheet, "How to do it at home")).items().get(0).startsWith("Trim the fat off the ribs. "), sheet.toString());
        assertTrue(sheet.blocks().contains(new Block.Heading("To buy, for 12 serves")));
        Block.Checks list = (Block.Checks) first(sheet, "To buy, for 12 serves");
        assertTrue(list.twoColumns());
        assertTrue(list.items().stream().noneMatch(item -> item.contains("water")), "water comes from the tap");
        assertEquals(POT.dish().ingredients().size() - 1, list.items().size());
    }

    /** 28.9 g of 20 g are 145 %; the guide of the demo is the reference intake of the European Union. */
    @Test
    void the_share_of_a_day_is_told_by_the_guide_of_the_demo() {
        List<List<String>> rows = ((Block.Table) handout(POT).blocks().get(1)).rows();
        assertEquals(List.of("share of 20 g a day, reference intakes (European Union)", "145 %", "145 %"), rows.get(1));
        assertTrue(handout(POT.withGuide("uk-sacn")).toString().contains("share of the serve's energy"), "a guide in shares of energy");
        assertEquals(3, ((Block.Table) handout(POT.withGuide("who-sodium")).blocks().get(1)).rows().size(), "a guide without saturated fat");
    }

    @Test
    void cautions_for_the_room_stay_off_the_handout_and_long_ones_are_cut_to_their_first_sentence() {
        List<String> care = ((Block.Lines) first(handout(pot(new Trim("ribs", Taken.TYPICAL))), "Take care")).items();
        assertTrue(care.contains("Use a sharp knife on a board that does not slip, and cut away from your fingers."), care.toString());
        assertTrue(care.stream().noneMatch(line -> line.contains("sample") || line.contains("local")), care.toString());
        assertTrue(care.stream().anyMatch(line -> line.startsWith("Never leave hot fat alone") && line.contains("If the pan catches fire")), care.toString());
    }

    @Test
    void the_handout_has_the_energy_and_the_money_of_the_ledger() {
        Sheet sheet = handout(POT);
        assertEquals(List.of("energy", "3,761 kJ = 899 kcal", "3,761 kJ = 899 kcal"), ((Block.Table) sheet.blocks().get(1)).rows().get(2));
        assertEquals(new Block.Paragraph("The food for the pot cost 34.93 cr; now it costs 34.93 cr. So the cost stays the same."), first(sheet, "What it costs"));
    }

    @Test
    void a_change_by_amount_is_told_with_its_amount_and_why() {
        Demo bake = Bundle.demo("lock-keepers-potato-bake");
        Block.Lines how = (Block.Lines) first(handout(bake.with(Plan.of(new CutDown("cheese", 0.5)))), "How to do it at home");
        assertEquals(List.of("Measure out 125 g of cheese in place of 250 g. Less of it in the pot means less of its fat on each plate."), how.items());
    }

    private static Demo crowded() {
        return pot(new CutDown("pepper", 0.5), new CutDown("garlic", 0.5), new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL), new CutDown("dripping", 0.5),
                new CutDown("salt", 0.5), new CutDown("onions", 0.5), new CutDown("carrots", 0.5), new CutDown("cabbage", 0.5), new CutDown("bay", 0.5));
    }

    /** What did most is kept, in the order told; the rest is in the whole script. */
    @Test
    void where_there_are_many_changes_those_that_did_most_are_told_on_one_page() {
        Sheet sheet = handout(crowded());
        assertTrue(TextSheet.of(sheet).split("\n").length <= 66, TextSheet.of(sheet));
        List<String> how = ((Block.Lines) first(sheet, "How to do it at home")).items();
        assertEquals("There was more: ask for the whole script.", how.get(how.size() - 1));
        assertTrue(how.size() <= 9, how.toString());
        int trim = at(how, "Trim the fat off the ribs.");
        assertTrue(trim >= 0 && at(how, "Pour off the fat of the ribs.") > trim && at(how, "Measure out 1/2 tbsp of dripping") > trim, how.toString());
    }

    private static int at(List<String> lines, String begins) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(begins)) {
                return i;
            }
        }
        return -1;
    }

    @Test
    void a_full_page_says_one_sentence_of_each_thing() {
        Sheet sheet = handout(crowded());
        assertTrue(under(sheet, "Take care").noneMatch(Block.Lines.class::isInstance), "cautions run on in one paragraph");
        assertTrue(under(handout(POT), "Take care").anyMatch(Block.Lines.class::isInstance));
        assertEquals("Trim the fat off the ribs. Most of its saturated fat sits in the white fat on the outside.", ((Block.Lines) first(sheet, "How to do it at home")).items()
                .stream().filter(line -> line.startsWith("Trim")).findFirst().orElseThrow());
    }

    @Test
    void raw_meat_lies_on_a_tray_of_its_own_and_all_else_on_the_other() {
        List<String> raw = ((Block.Checks) first(bench(POT), "Tray for raw foods, kept apart")).items();
        List<String> rest = ((Block.Checks) first(bench(POT), "Tray for everything else")).items();
        assertEquals(List.of("2 kg beef short rib, short ribs on the bone, one or two each"), raw);
        assertEquals(POT.dish().ingredients().size() - 1, rest.size());
        assertTrue(rest.contains("3 large onions, sliced") && !rest.containsAll(raw));
    }

    @Test
    void a_bench_without_equipment_says_so() {
        assertEquals(new Block.Paragraph("Nothing this time."), first(bench(POT), "Equipment"));
    }

    @Test
    void a_piece_is_kept_back_for_what_the_kitchen_does_earlier() {
        assertTrue(ahead(pot(new PourOff("ribs", Taken.TYPICAL), new MorePeople(4), new CutDown("salt", 0.5))).contains("Keep a piece back to show it on. Change 3: use less of the salt."));
    }
}

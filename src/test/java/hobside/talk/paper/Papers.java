package hobside.talk.paper;

import hobside.Bundle;
import hobside.advice.Offer;
import hobside.dish.BulkOut;
import hobside.dish.Plan;
import hobside.file.Scripts;
import hobside.file.WordFiles;
import hobside.talk.Demo;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;

/** Demos to be printed in tests, and a page read again as XML. */
final class Papers {

    private Papers() {}

    /** A bundled dish with some of the changes that are offered for it, drawn by a seed. */
    static Demo random(long seed) {
        Random random = new Random(seed);
        Demo demo = Bundle.demo(Bundle.DISHES.get(random.nextInt(Bundle.DISHES.size())));
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            String id = demo.dish().ingredients().get(random.nextInt(demo.dish().ingredients().size())).id();
            List<Offer> offers = random.nextInt(3) == 0 ? Bundle.STUDY.offers().forPot(demo.dish(), demo.plan())
                    : Bundle.STUDY.offers().forIngredient(demo.dish(), demo.plan(), id);
            if (!offers.isEmpty()) {
                demo = demo.with(demo.plan().with(offers.get(random.nextInt(offers.size())).change()));
            }
        }
        return demo;
    }

    /** Every dish that comes with the program, told in a language. */
    static List<Demo> bundled(String language) {
        return Bundle.DISHES.stream().map(dish -> changed(dish, language)).toList();
    }

    /** Whether all files of words of a language are there. */
    static boolean isWhole(String language) {
        try {
            return WordFiles.read(language).language().code().equals(language);
        } catch (IllegalStateException incomplete) {
            return false;
        }
    }

    private static Demo changed(String dish, String language) {
        Demo demo = Bundle.demo(dish);
        Plan plan = Plan.of(Bundle.STUDY.offers().forPot(demo.dish(), demo.plan()).stream().map(Offer::change).filter(change -> !(change instanceof BulkOut)).limit(2)
                .toArray(hobside.dish.Change[]::new));
        return demo.with(plan).with(demo.script().in(language));
    }

    static Sheet sheet(Scripts.Paper paper, Demo demo) {
        return Scripts.sheet(paper, demo, Bundle.STUDY);
    }

    /** Reads a page as XML does; throws where it is not well formed. */
    static Document page(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }
}

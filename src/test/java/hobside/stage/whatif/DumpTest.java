package hobside.stage.whatif;

import hobside.Bundle;
import hobside.file.*;
import hobside.talk.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class DumpTest {
    @Test
    void dump() throws Exception {
        for (String name : List.of("lighter-rib-pot", "lighter-pumpkin-pot", "lighter-potato-bake")) {
            for (String code : List.of("en", "es")) {
            var read = hobside.Finished.demo(name);
            Demo demo = read.with(read.script().in(code));
            System.out.println("== " + name + " " + code);
            for (Prepared p : PreparedAnswers.of(Scripts.stand(demo, Bundle.STUDY), List.of(), Bundle.STUDY.pantry(), Bundle.STUDY.books())) {
                System.out.println(p.key() + " | " + p.question() + " | " + (code.equals("en") ? p.answer() : ""));
            }
            }
        }
    }
}

package hobside.stage.whatif;

import java.util.*;
import org.junit.jupiter.api.Test;

class DumpTest {
    @Test
    void dump() throws Exception {
        int[] top1 = new int[2], top3 = new int[2], n = new int[2], sh = new int[2], ok = new int[2];
        for (AskedQuestions.Row row : AskedQuestions.all()) {
            int s = row.set().equals("held") ? 1 : 0;
            var hits = AskedQuestions.index(row.demo(), row.language()).find(row.question(), 3);
            String shown = hits.stream().map(h -> h.prepared().key() + String.format(" %.2f", h.score())).toList().toString();
            if (row.isAnswered()) {
                n[s]++; int p = row.place(); if (p == 1) top1[s]++; if (p >= 1 && p <= 3) top3[s]++;
                if (row.shown().isPresent()) { sh[s]++; if (row.right().contains(row.shown().get())) ok[s]++; } if (s == 0 && (p != 1 || row.shown().isEmpty())) System.out.println(row.question() + " -> " + shown + " right " + row.right());
            } else if (s == 0) System.out.println("NONE " + row.question() + " -> " + shown);
        }
        System.out.println(Arrays.toString(n) + " top1 " + Arrays.toString(top1) + " top3 " + Arrays.toString(top3) + " shown " + Arrays.toString(sh) + " right " + Arrays.toString(ok));
    }
}

package hobside.screen.live;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
class PeekTest {
    @TempDir Path folder;
    @Test
    void look() {
        OnTheDay day = new OnTheDay(folder).start();
        day.play("L");
        for (int i = 0; i < 14; i++) { day.later(33).play("space"); }
        day.later(20.5);
        System.out.println(day.text());
        day.play("l"); System.out.println(day.text()); day.play("enter"); System.out.println(day.text()); 
        day.play("c");  System.out.println(day.text()); day.play("down down down enter"); System.out.println(day.text()); 
        day.play("n").type("more salt?").play("enter");
        day.play("escape"); System.out.println(day.text()); day.play("enter"); System.out.println(day.text());day.play("L");
         System.out.println(day.text());
        for (int i = 0; i < 45; i++) { day.later(10).play("space"); if(i%5==0 || i > 24) System.out.println(i + day.text()); if (day.shows("After the talk")) break;}
        System.out.println(day.text());
        day.play("page-down"); System.out.println(day.text());
    }
    @Test
    void rehearse() {
        OnTheDay day = new OnTheDay(folder).start();
        day.play("R");
        for (int i = 0; i < 14; i++) { day.later(33).play("space"); if (i == 3) day.play("s"); if (i == 5) day.play("t t"); }
        day.later(20.5);
        System.out.println(day.text());
        day.stage().resize(60, 20); System.out.println(day.text()); System.out.println(day.stage().plainText());
        day.stage().resize(80, 24); day.play("escape"); System.out.println(day.text());day.play("page-down");System.out.println(day.text());
        day.play("c"); System.out.println(day.text());
    }
}

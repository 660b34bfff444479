package hobside.screen.live;

import hobside.screen.Screen;
import hobside.screen.read.ReadScreen;
import java.util.List;

/** What is read when the talk is over. All of it stands in the file of the run as well. */
final class AfterPage {

    private AfterPage() {}

    static Screen of(Playing playing) {
        return ReadScreen.page(playing.bench().saying("The talk is over; its run is kept with the demo."), "After the talk", width -> RunPage.lines(playing, width, List.of()));
    }
}

package hobside.screen.asked;

import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.bench.Bench;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;

/** A stand-in for the live screen: it counts the news it hears, and writes down what is kept and noted. */
record Still(int heard, String last, List<Demo> kept, List<String> noted) implements Screen {

    static Still fresh() {
        return new Still(0, "", new ArrayList<>(), new ArrayList<>());
    }

    @Override
    public Next update(Message message) {
        return Next.to(message instanceof Message.KeyPressed ? this : new Still(heard + 1, last, kept, noted));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 0, "the talk goes on, heard " + heard);
        frame.put(1, 0, last);
    }

    Next keep(Demo changed, String said) {
        kept.add(changed);
        return Next.to(new Still(heard, said, kept, noted));
    }

    Next note(String question, boolean answered) {
        noted.add((answered ? "answered: " : "later: ") + question);
        return Next.to(new Still(heard, noted.get(noted.size() - 1), kept, noted));
    }

    WhatIfScreen whatIf(Bench bench) {
        return WhatIfScreen.of(this, bench, this::keep);
    }

    MissingScreen missing(Bench bench) {
        return MissingScreen.of(this, bench, this::keep);
    }

    AskedScreen asked(Bench bench) {
        return AskedScreen.of(this, bench, this::note);
    }
}

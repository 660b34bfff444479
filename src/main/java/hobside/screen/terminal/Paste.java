package hobside.screen.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;

/** Gathers a pasted text. It is bounded, and it ends by itself when its end mark never comes. */
final class Paste {
    static final int LONGEST = 65_536;

    private static final int SILENCE_MILLIS = 2_000;
    private static final int STEP_MILLIS = 5;

    private Paste() {}

    /** Where key strokes come from: null when none is there yet. */
    interface Source {
        KeyStroke pollInput() throws IOException;
    }

    static String readFrom(Source source) throws IOException {
        StringBuilder text = new StringBuilder();
        KeyStroke stroke = soon(source);
        while (stroke != null && stroke != OddSequences.PASTE_ENDS && stroke.getKeyType() != KeyType.EOF) {
            if (text.length() < LONGEST) {
                append(text, stroke);
            }
            stroke = soon(source);
        }
        return text.toString();
    }

    private static void append(StringBuilder text, KeyStroke stroke) {
        KeyType type = stroke.getKeyType();
        if (type == KeyType.Enter) {
            text.append('\n');
        } else if (type == KeyType.Tab) {
            text.append('\t');
        } else if (type == KeyType.Character && !stroke.isCtrlDown() && !stroke.isAltDown()) {
            text.append(stroke.getCharacter().charValue());
        }
    }

    private static KeyStroke soon(Source source) throws IOException {
        KeyStroke stroke = source.pollInput();
        for (int waited = 0; stroke == null && waited < SILENCE_MILLIS; waited += STEP_MILLIS) {
            pause();
            stroke = source.pollInput();
        }
        return stroke;
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(STEP_MILLIS);
        } catch (InterruptedException e) {
            throw new IOException("interrupted in the middle of a paste", e);
        }
    }
}

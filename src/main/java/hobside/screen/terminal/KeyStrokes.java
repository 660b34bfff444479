package hobside.screen.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import hobside.screen.Key;
import hobside.screen.Key.Kind;
import java.util.Optional;

/** Turns the library's key strokes into our keys. */
final class KeyStrokes {
    /** What Java makes of bytes that are not of the character set. */
    private static final char UNREADABLE = '\ufffd';

    private KeyStrokes() {}

    /** Our key; empty for what has no meaning here, such as a letter held with Alt. */
    static Optional<Key> key(KeyStroke stroke) {
        KeyType type = stroke.getKeyType();
        if (type == KeyType.Character) {
            return character(stroke);
        }
        if (type.compareTo(KeyType.F1) >= 0 && type.compareTo(KeyType.F19) <= 0) {
            return Optional.of(new Key(Kind.FUNCTION, 1 + type.ordinal() - KeyType.F1.ordinal()));
        }
        Kind kind = kind(type);
        return kind == null ? Optional.empty() : Optional.of(Key.of(kind));
    }

    private static Optional<Key> character(KeyStroke stroke) {
        if (stroke.isAltDown()) {
            return isBackTab(stroke) ? Optional.of(Key.of(Kind.BACK_TAB)) : Optional.empty();
        }
        char character = stroke.getCharacter();
        if (character == UNREADABLE) {
            return Optional.empty();
        }
        return Optional.of(stroke.isCtrlDown() ? Key.ctrl(character) : Key.typed(character));
    }

    /** The Linux console sends Esc and Tab when Tab is held with Shift, which reads as i with Ctrl and Alt. */
    private static boolean isBackTab(KeyStroke stroke) {
        return stroke.isCtrlDown() && stroke.getCharacter() == 'i';
    }

    /** Held modifiers change nothing: an arrow with Shift is an arrow. */
    private static Kind kind(KeyType type) {
        return switch (type) {
            case Enter -> Kind.ENTER;
            case Escape -> Kind.ESCAPE;
            case Tab -> Kind.TAB;
            case ReverseTab -> Kind.BACK_TAB;
            case ArrowUp -> Kind.UP;
            case ArrowDown -> Kind.DOWN;
            case ArrowLeft -> Kind.LEFT;
            case ArrowRight -> Kind.RIGHT;
            case PageUp -> Kind.PAGE_UP;
            case PageDown -> Kind.PAGE_DOWN;
            case Home -> Kind.HOME;
            case End -> Kind.END;
            case Backspace -> Kind.BACKSPACE;
            case Delete -> Kind.DELETE;
            case Insert -> Kind.INSERT;
            default -> null;
        };
    }
}

package hobside.file;

import java.util.ArrayList;
import java.util.List;

/**
 * A tree of JSON that was read and checked at build time, as a page: a bundled dish is opened from it at the start without the
 * parser, whose classes take longer to load than the dish to read. Lines are kept, so that a message could still name one.
 */
final class PackedTree {

    private static final int OBJECT = 0;
    private static final int LIST = 1;
    private static final int TEXT = 2;
    private static final int NUMBER = 3;
    private static final int WORD = 4;

    private PackedTree() {}

    static byte[] page(Json.Obj tree) {
        PackOut out = new PackOut();
        write(tree, out);
        return out.bytes();
    }

    private static void write(Json value, PackOut out) {
        if (value instanceof Json.Obj object) {
            head(OBJECT, object, out);
            out.count(object.size());
            for (Json.Entry entry : object.entries()) {
                out.text(entry.key());
                out.count(entry.line());
                write(entry.value(), out);
            }
        } else if (value instanceof Json.Arr list) {
            head(LIST, list, out);
            out.count(list.items().size());
            for (Json item : list.items()) {
                write(item, out);
            }
        } else if (value instanceof Json.Text text) {
            head(TEXT, text, out);
            out.text(text.value());
        } else if (value instanceof Json.Num number) {
            head(NUMBER, number, out);
            out.text(number.written());
        } else if (value instanceof Json.Word word) {
            head(WORD, word, out);
            out.text(word.written());
        }
    }

    private static void head(int kind, Json value, PackOut out) {
        out.count(kind);
        out.count(value.line());
    }

    /** The tree of a page of ours. */
    static Json.Obj read(PackIn in) {
        return (Json.Obj) value(in);
    }

    private static Json value(PackIn in) {
        int kind = in.count();
        int line = in.count();
        return switch (kind) {
            case OBJECT -> object(line, in);
            case LIST -> list(line, in);
            case TEXT -> new Json.Text(line, in.text());
            case NUMBER -> number(line, in.text());
            case WORD -> new Json.Word(line, in.text());
            default -> throw new IllegalArgumentException("no kind of JSON value: " + kind);
        };
    }

    private static Json number(int line, String written) {
        return new Json.Num(line, Numbers.parse(written), written);
    }

    private static Json object(int line, PackIn in) {
        Json.Obj object = new Json.Obj(line);
        int size = in.size();
        for (int i = 0; i < size; i++) {
            String key = in.text();
            int at = in.count();
            object.add(new Json.Entry(key, at, value(in)));
        }
        return object;
    }

    private static Json list(int line, PackIn in) {
        int size = in.size();
        List<Json> items = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            items.add(value(in));
        }
        return new Json.Arr(line, items);
    }
}

package hobside.file;

import java.util.List;
import java.util.Optional;

/** The first line of every file of ours: {@code "hobside": "dish/1"} says what it is and in which form. */
final class Kind {

    private Kind() {}

    /** The tree of a file of one of the wanted kinds; empty, with problems, when it is another or no file of ours. */
    static Optional<Json.Obj> of(RawFile file, List<String> wanted, Problems problems) {
        Optional<Json> tree = JsonTree.read(file, problems);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        if (!(tree.get() instanceof Json.Obj object)) {
            problems.add(tree.get().line(), tree.get().shown(), Wanted.of("a file that begins with {",
                    "check that this is a file of Hobside"));
            return Optional.empty();
        }
        return isWanted(object, wanted, problems) ? Optional.of(object) : Optional.empty();
    }

    /** A tree that was read otherwise; empty, with a problem, when it is another kind of file. */
    static Optional<Json.Obj> of(Json.Obj tree, List<String> wanted, Problems problems) {
        return isWanted(tree, wanted, problems) ? Optional.of(tree) : Optional.empty();
    }

    /** The kind that an object says it is; empty when it says nothing. */
    static String word(Json.Obj object) {
        Json kind = object.find("hobside");
        return kind instanceof Json.Text text ? text.value() : "";
    }

    private static boolean isWanted(Json.Obj object, List<String> wanted, Problems problems) {
        String word = word(object);
        if (wanted.contains(word)) {
            return true;
        }
        Json kind = object.find("hobside");
        boolean newer = !word.isEmpty() && wanted.stream().anyMatch(each -> sameThing(each, word));
        problems.add(Where.TOP.field("hobside"), kind == null ? object.line() : kind.line(), kind == null ? "nothing" : kind.shown(),
                Wanted.of("\"" + String.join("\" or \"", wanted) + "\"", newer
                        ? "this file was made by another version of Hobside; open it with that one"
                        : "put the file into the folder for its kind, or correct its first line"));
        return false;
    }

    private static boolean sameThing(String one, String other) {
        return other.startsWith(one.substring(0, one.indexOf('/') + 1));
    }
}

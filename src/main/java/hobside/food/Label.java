package hobside.food;

import java.util.List;

/** What a food is called: its id in files, its plain name, its other names for the search, its group and its source. */
public record Label(String id, String name, List<String> also, String group, Source source) {

    public Label {
        also = List.copyOf(also);
    }

    public Label with(Source other) {
        return new Label(id, name, also, group, other);
    }

    public Label withId(String other) {
        return new Label(other, name, also, group, source);
    }

    public static Label of(String id, String name) {
        return new Label(id, name, List.of(), "own", Source.OWN);
    }
}

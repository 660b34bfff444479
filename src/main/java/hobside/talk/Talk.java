package hobside.talk;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The narrated script of a demo: sections in the order in which they are spoken and cooked. */
public record Talk(Front front, List<Section> sections) {

    /** Title and what stands below it. */
    public record Front(String title, List<String> about) {

        public Front {
            about = List.copyOf(about);
        }
    }

    /** Which part of the talk a section is. */
    public enum Part {
        WELCOME,
        BENCH,
        /** A stretch of cooking: hands are at the hob, or the pot is waited for. */
        WAIT,
        CHANGE,
        ASIDE,
        RECAP,
        QUESTIONS,
        TABLE
    }

    /**
     * A stretch of the talk under one heading, and the board as it stands when it is over.
     *
     * @param figures the live figures that its words may use, each with what is said for it
     */
    public record Section(Head head, List<Cue> cues, Optional<Board> board, Map<String, String> figures) {

        /** What a section is known by, what part it is, and its heading. */
        public record Head(Part part, String key, String heading) {}

        public Section {
            cues = List.copyOf(cues);
            figures = Map.copyOf(figures);
        }

        static Section of(Head head, List<Cue> cues) {
            return new Section(head, cues, Optional.empty(), Map.of());
        }

        Section with(Board board) {
            return new Section(head, cues, Optional.of(board), figures);
        }

        Section with(List<Cue> other) {
            return new Section(head, other, board, figures);
        }

        Section knowing(Map<String, String> more) {
            return new Section(head, cues, board, more);
        }

        public String heading() {
            return head.heading();
        }

        public String key() {
            return head.key();
        }

        public Part part() {
            return head.part();
        }
    }

    /** The running total as it is written on the board, figure by figure, each with its label. */
    public record Board(String caption, List<Line> lines) {

        /** A label, the figure now, and how it has moved since the start; empty when it has not. */
        public record Line(String label, String now, String moved) {}

        public Board {
            lines = List.copyOf(lines);
        }
    }

    public Talk {
        sections = List.copyOf(sections);
    }

    public String title() {
        return front.title();
    }

    public List<String> about() {
        return front.about();
    }

    /** All cues in their order. */
    public List<Cue> cues() {
        return sections.stream().flatMap(section -> section.cues().stream()).toList();
    }

    Talk with(List<Section> other) {
        return new Talk(front, other);
    }
}

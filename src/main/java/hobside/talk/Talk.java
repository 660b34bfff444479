package hobside.talk;

import java.util.List;
import java.util.Optional;

/** The narrated script of a demo: sections in the order in which they are spoken and cooked. */
public record Talk(String title, List<String> about, List<Section> sections) {

    /** A stretch of the talk under one heading, and the board as it stands when it is over. */
    public record Section(String heading, List<Cue> cues, Optional<Board> board) {

        public Section {
            cues = List.copyOf(cues);
        }

        static Section of(String heading, List<Cue> cues) {
            return new Section(heading, cues, Optional.empty());
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
        about = List.copyOf(about);
        sections = List.copyOf(sections);
    }
}

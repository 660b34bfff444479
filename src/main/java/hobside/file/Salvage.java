package hobside.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Opens a damaged document as far as it can be trusted. The same readers that read a sound file are asked; what they refuse is taken out
 * and told, and they are asked again, until they are content. What may be taken out without making a figure untrue, {@link Parts} says;
 * when anything else is at fault the file is rejected.
 */
final class Salvage<T> {

    /** Reads a document from its tree; faults go to the problems. */
    interface Reading<T> {
        Optional<T> read(Json.Obj tree, Problems problems);
    }

    private static final Wanted NO_FIGURE = Wanted.of("a dish that is there whole: without a part of it no figure would be true",
            "mend these lines by hand, or take the last good copy; the file is left as it is");

    private static final Wanted NO_HEADING = Wanted.of("a heading that is there whole: without it nobody knows what the rows stand for",
            "mend these lines by hand, or take the last good copy; the file is left as it is");

    private final RawFile file;
    private final Parts parts;
    private final Reading<T> reading;
    private final Missing missing;

    private Salvage(RawFile file, Parts parts, Reading<T> reading) {
        this.file = file;
        this.parts = parts;
        this.reading = reading;
        this.missing = new Missing(parts);
    }

    /** What can be trusted of a file that was rejected; the same faults when that is not enough. */
    static <T> Read<T> of(RawFile file, Read<T> rejected, Parts parts, Reading<T> reading) {
        if (rejected.value().isPresent() || file.bytes().length > RawFile.MOST_BYTES) {
            return rejected;
        }
        return new Salvage<>(file, parts, reading).read(rejected);
    }

    private Read<T> read(Read<T> rejected) {
        JsonRest.Rest rest = JsonHoles.read(file.bytes());
        Optional<Json.Obj> whole = rest.tree().filter(tree -> tree instanceof Json.Obj).map(tree -> (Json.Obj) tree);
        if (whole.isEmpty() || whole.get().size() == 0) {
            return rejected;
        }
        if (rest.fault() > 0) {
            missing.cut(rest.fault(), rest.isCut());
        }
        if ((rest.fault() > 0 || holdsGap(whole.get())) && !parts.isSoundBefore(whole.get(), rest.open())) {
            return refused(rejected.problems(), rest.fault());
        }
        return sifted(whole.get(), rejected, rest.fault() > 0 || holdsGap(whole.get()));
    }

    private static boolean holdsGap(Json json) {
        if (json instanceof Json.Obj object) {
            return object.entries().stream().anyMatch(entry -> entry.key().equals(JsonRest.GAP) || holdsGap(entry.value()));
        }
        return json instanceof Json.Arr list ? list.items().stream().anyMatch(Salvage::holdsGap) : JsonRest.isGap(json);
    }

    private Read<T> refused(Collection<InputProblem> faults, int line) {
        Problems problems = new Problems(file.name());
        problems.add(line, parts.isOfRows() ? "damage in the heading" : "damage in the dish itself", parts.isOfRows() ? NO_HEADING : NO_FIGURE);
        List<InputProblem> all = new ArrayList<>(problems.all());
        all.addAll(faults);
        return new Rejected<>(all);
    }

    /** Every round takes something out, so there is an end. */
    private Read<T> sifted(Json.Obj from, Read<T> rejected, boolean torn) {
        Json.Obj tree = from;
        List<InputProblem> told = new ArrayList<>(rejected.problems());
        while (true) {
            Problems problems = new Problems(file.name());
            Optional<T> value = reading.read(tree, problems);
            if (problems.isEmpty() && value.isPresent()) {
                return missing.isNone() ? rejected : new Salvaged<>(value.get(), missing.told(tree), told);
            }
            Json now = tree;
            Set<Path> out = new LinkedHashSet<>();
            for (InputProblem problem : problems.all()) {
                Optional<Path> path = parts.droppable(Path.parse(problem.field()), tree);
                if (path.isEmpty() && !isCount(problem)) {
                    return torn ? refused(List.of(problem), problem.line()) : first(problem, rejected);
                }
                path.filter(out::add).ifPresent(each -> missing.out(each, problem, isGap(each, problem, now)));
            }
            if (out.isEmpty()) {
                return rejected;
            }
            tree = (Json.Obj) Path.NONE.without(out, tree);
        }
    }

    private static boolean isGap(Path path, InputProblem fault, Json tree) {
        return JsonRest.isGap(path.in(tree)) || fault.field().endsWith(JsonRest.GAP);
    }

    /** The same faults, the one that decides before the others. */
    private Read<T> first(InputProblem decisive, Read<T> rejected) {
        Set<InputProblem> all = new LinkedHashSet<>(List.of(decisive));
        all.addAll(rejected.problems());
        return new Rejected<>(List.copyOf(all));
    }

    /** "40 more faults": they come to light in the next round. */
    static boolean isCount(InputProblem problem) {
        return problem.line() == 0 && problem.field().isEmpty() && problem.found().endsWith(" more faults");
    }

    /** A place in the tree, such as {@code plan[3]}: keys, and numbers of items. */
    record Path(List<Object> steps) {

        static final Path NONE = new Path(List.of());

        Path {
            steps = List.copyOf(steps);
        }

        /** From the field of a problem. A key with a dot or bracket in it leads to no place, so that nothing is taken out for it. */
        static Path parse(String field) {
            List<Object> steps = new ArrayList<>();
            for (String part : field.isEmpty() ? new String[0] : field.split("\\.")) {
                int bracket = part.indexOf('[');
                steps.add(bracket < 0 ? part : part.substring(0, bracket));
                while (bracket >= 0) {
                    int end = part.indexOf(']', bracket);
                    String number = end < 0 ? "" : part.substring(bracket + 1, end);
                    steps.add(number.matches("\\d{1,6}") ? (Object) Integer.valueOf(number) : "?");
                    bracket = end < 0 ? -1 : part.indexOf('[', end);
                }
            }
            return new Path(steps);
        }

        Path first(int count) {
            return new Path(steps.subList(0, count));
        }

        Path then(Object step) {
            List<Object> more = new ArrayList<>(steps);
            more.add(step);
            return new Path(more);
        }

        Object at(int step) {
            return step < steps.size() ? steps.get(step) : "";
        }

        int size() {
            return steps.size();
        }

        /** The tree without these places. This path is where the tree stands. */
        Json without(Set<Path> out, Json tree) {
            if (tree instanceof Json.Obj object) {
                Json.Obj fresh = new Json.Obj(object.line());
                for (Json.Entry entry : object.entries()) {
                    if (!out.contains(then(entry.key()))) {
                        fresh.add(new Json.Entry(entry.key(), entry.line(), then(entry.key()).without(out, entry.value())));
                    }
                }
                return fresh;
            }
            return tree instanceof Json.Arr list ? new Json.Arr(list.line(), items(out, list)) : tree;
        }

        private List<Json> items(Set<Path> out, Json.Arr list) {
            List<Json> items = new ArrayList<>();
            for (int i = 0; i < list.items().size(); i++) {
                if (!out.contains(then(i))) {
                    items.add(then(i).without(out, list.items().get(i)));
                }
            }
            return items;
        }

        /** What stands at this place; null when nothing does. */
        Json in(Json tree) {
            Json here = tree;
            for (Object step : steps) {
                if (step instanceof Integer number) {
                    here = here instanceof Json.Arr list && number < list.items().size() ? list.items().get(number) : null;
                } else {
                    here = here instanceof Json.Obj object ? object.find((String) step) : null;
                }
            }
            return here;
        }
    }
}

package hobside.stage.order;

import java.util.List;

/** What stands in the way of any plan. */
public sealed interface Why {

    /**
     * Jobs that wait for each other cannot be over in time.
     *
     * @param jobs the chain in the order of waiting; the first starts at its earliest, the last has a latest end
     * @param end the earliest end of the last one, in seconds
     * @param latest when it must be over
     */
    record Chain(List<Integer> jobs, int end, int latest) implements Why {
        public Chain {
            jobs = List.copyOf(jobs);
        }
    }

    /**
     * Jobs that must all run within a stretch of time need more of a resource than there is.
     *
     * @param resource its index
     * @param jobs who must run within the stretch, with those they wait for and those that wait for them taken into account
     * @param from the stretch begins, in seconds
     * @param until the stretch ends
     * @param demand duration times amount, summed over the jobs
     * @param room length of the stretch times capacity, less than the demand
     */
    record Crowd(int resource, List<Integer> jobs, int from, int until, long demand, long room) implements Why {
        public Crowd {
            jobs = List.copyOf(jobs);
        }
    }

    /** No single cause was found, but every way was tried or shown to fail. */
    record Searched() implements Why {}
}

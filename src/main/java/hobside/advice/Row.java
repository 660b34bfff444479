package hobside.advice;

/** One linear condition on a {@link Tally}: its weighted sum is at most so much. */
record Row(double[] weights, double most) {

    static Row atMost(int of, double most) {
        return new Row(Tally.weight(of, 1), most);
    }

    static Row atLeast(int of, double least) {
        return new Row(Tally.weight(of, -1), -least);
    }
}

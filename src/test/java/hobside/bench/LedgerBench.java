package hobside.bench;
/** stub for now. */
public final class LedgerBench {
    private LedgerBench() {}
    public static void main(String[] args) {
        System.out.println("x");
    }
}

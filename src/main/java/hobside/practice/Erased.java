package hobside.practice;

/** A trainee was erased: whatever was logged of that nickname up to this time is gone, wherever it turns up again. */
public record Erased(Attempt.Head head) implements Entry {

    @Override
    public String id() {
        return head.id();
    }

    @Override
    public String trainee() {
        return head.trainee();
    }

    @Override
    public long at() {
        return head.at();
    }

    boolean covers(Entry entry) {
        return entry.trainee().equals(trainee()) && entry.at() <= at();
    }
}

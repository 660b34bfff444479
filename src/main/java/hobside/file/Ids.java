package hobside.file;

import java.util.Optional;

/** Ids: 1 to 60 small letters, digits and hyphens. */
public final class Ids {

    private static final Wanted WANTED = Wanted.of("1 to 60 of a-z, 0-9 and -",
            "write it in small letters with hyphens, such as beef-mince");

    private Ids() {}

    static Optional<String> of(Fields fields, String key) {
        Json value = fields.value(key);
        if (value instanceof Json.Text text && isId(text.value())) {
            return Optional.of(text.value());
        }
        fields.fault(key, value == null ? "nothing" : value.shown(), WANTED);
        return Optional.empty();
    }

    public static boolean isId(String text) {
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (!(each >= 'a' && each <= 'z' || each >= '0' && each <= '9' || each == '-')) {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= Limits.ID;
    }
}

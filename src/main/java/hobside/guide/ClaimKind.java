package hobside.guide;

import java.util.Arrays;
import java.util.Optional;

/** The claims whose words have a legal number behind them in many countries. */
public enum ClaimKind {
    LOW_FAT("low fat"),
    FAT_FREE("fat free"),
    REDUCED_FAT("reduced fat"),
    LOW_SATURATED("low in saturated fat"),
    SATURATED_FREE("free of saturated fat"),
    REDUCED_SATURATED("reduced saturated fat"),
    LIGHT("light"),
    LOW_ENERGY("low energy"),
    REDUCED_ENERGY("reduced energy"),
    LOW_SODIUM("low sodium"),
    VERY_LOW_SODIUM("very low sodium"),
    SODIUM_FREE("sodium free"),
    REDUCED_SODIUM("reduced sodium");

    private final String word;

    ClaimKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<ClaimKind> parse(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}

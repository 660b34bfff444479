package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafeNameTest {

    @ParameterizedTest
    @CsvSource({
        "Lock-keeper's potato bake, lock-keepers-potato-bake",
        "Crème brûlée, creme-brulee",
        "../../etc/passwd, etc-passwd",
        "C:\\temp\\x, c-temp-x",
        "'  ', dish",
        "鍋, dish",
        "NUL, dish-nul",
        "-- a -- b --, a-b",
    })
    void words_become_a_name(String words, String name) {
        assertEquals(name, SafeName.of(words));
    }

    @Test
    void every_name_is_safe_however_long() {
        String long_ = SafeName.of("potato ".repeat(100));
        assertTrue(SafeName.isSafe(long_) && long_.length() <= 60, long_);
        assertTrue(SafeName.isSafe(SafeName.numbered(long_, 999)) && SafeName.numbered(long_, 999).endsWith("-999"));
    }
}

package hobside.screen.asked;

import hobside.screen.Key;
import hobside.screen.Keys;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The keys of "what if", each for what one is doing. */
enum WhatIfAction implements Keys.Bound {
    ASK(WhatIfScreen.Mode.CHOOSE, "enter", "ask about it"),
    KEEP_WAY(WhatIfScreen.Mode.WAYS, "enter", "keep it"),
    KEEP_AMOUNT(WhatIfScreen.Mode.AMOUNT, "enter", "keep it"),
    ANOTHER(WhatIfScreen.Mode.WAYS, "tab", "and another"),
    ANOTHER_AMOUNT(WhatIfScreen.Mode.AMOUNT, "tab", "and another"),
    FIND(WhatIfScreen.Mode.WAYS, "f", "another food"),
    AMOUNT(WhatIfScreen.Mode.WAYS, "a", "how much"),
    LET_GO(null, "escape", "let it go"),
    BACK(WhatIfScreen.Mode.CHOOSE, "escape", "back"),
    OUT(null, "ctrl-c", "");

    private final WhatIfScreen.Mode mode;
    private final Keys.Binding binding;

    /** Without a mode it is for all in which nothing else hangs on the key. */
    WhatIfAction(WhatIfScreen.Mode mode, String keys, String brief) {
        this.mode = mode;
        this.binding = new Keys.Binding(keys, brief, brief);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }

    private boolean isOn(WhatIfScreen.Mode other) {
        return mode == other || mode == null && (this != LET_GO || other != WhatIfScreen.Mode.CHOOSE);
    }

    static Optional<WhatIfAction> of(WhatIfScreen.Mode mode, Key key) {
        return Arrays.stream(values()).filter(action -> action.isOn(mode) && action.binding.isFor(key)).findFirst();
    }

    static List<WhatIfAction> lastLine(WhatIfScreen.Mode mode) {
        return Arrays.stream(values()).filter(action -> action.isOn(mode)).toList();
    }
}

package hobside.practice;

import hobside.Bundle;
import hobside.talk.Demo;
import hobside.talk.Script;
import java.util.LinkedHashMap;
import java.util.Map;

/** The bundled dishes and the finished demos as a syllabus, in one language; each language is worked out once for all tests. */
public final class Practised {

    private static final Map<String, Syllabus> KNOWN = new LinkedHashMap<>();

    private Practised() {}

    public static synchronized Syllabus in(String code) {
        return KNOWN.computeIfAbsent(code, Practised::made);
    }

    private static Syllabus made(String code) {
        Map<String, Demo> demos = new LinkedHashMap<>();
        Bundle.DISHES.forEach(dish -> demos.put(dish, Bundle.demo(dish)));
        demos.put("lighter-rib-pot", finished("lighter-rib-pot"));
        return Syllabus.of(demos, teaching(code));
    }

    static Demo finished(String name) {
        return hobside.file.Kitchen.at(java.nio.file.Path.of(".")).demo(name, Bundle.STUDY.shelf()).value().orElseThrow();
    }

    static Teaching teaching(String code) {
        Demo demo = Bundle.demo(Bundle.DISHES.get(0));
        return new Teaching(Bundle.STUDY.books(), Bundle.STUDY.pantry(), Bundle.STUDY.beside(demo.with(Script.UNTOUCHED.in(code))));
    }
}

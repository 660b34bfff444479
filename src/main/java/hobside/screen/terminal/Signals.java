package hobside.screen.terminal;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * Listens for the signal that a window has another size. Java has no official way to do this; the unofficial one is
 * called by name, and where it is missing the size simply stays as it was at the start.
 */
final class Signals {
    private Signals() {}

    static void onResize(Runnable resized) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object proxy = Proxy.newProxyInstance(handler.getClassLoader(), new Class<?>[] {handler}, calling(resized));
            signal.getMethod("handle", signal, handler)
                    .invoke(null, signal.getConstructor(String.class).newInstance("WINCH"), proxy);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            // No such signal on this system: resizing is then noticed at the next start.
            return;
        }
    }

    private static InvocationHandler calling(Runnable resized) {
        return new InvocationHandler() {
            @Override
            public Object invoke(Object proxy, Method method, Object[] arguments) {
                return switch (method.getName()) {
                    case "handle" -> {
                        resized.run();
                        yield null;
                    }
                    case "equals" -> proxy == arguments[0];
                    case "hashCode" -> System.identityHashCode(proxy);
                    default -> "resize";
                };
            }
        };
    }
}

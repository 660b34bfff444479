package hobside.bench;

import java.io.IOException;

/** The least a Java program can do: say a word, and wait to be let go, so that its memory can be read. */
public final class Hello {
    private Hello() {}

    public static void main(String[] args) throws IOException {
        System.out.println(args[0]);
        while (System.in.read() != 'q') {
            System.out.flush();
        }
    }
}

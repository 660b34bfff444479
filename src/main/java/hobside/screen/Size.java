package hobside.screen;

/** How many columns and rows a screen has. Hobside draws from 60 x 20 upwards; 80 x 24 is home. */
public record Size(int width, int height) {
    /** The size every screen is designed for. */
    public static final Size HOME = new Size(80, 24);
    /** The smallest size every screen still works in. */
    public static final Size LEAST = new Size(60, 20);

    public Size {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("a screen of " + width + " x " + height);
        }
    }

    /** Whether everything that fits in the other size fits in this one. */
    public boolean holds(Size other) {
        return width >= other.width && height >= other.height;
    }
}

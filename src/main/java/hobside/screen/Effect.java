package hobside.screen;

/** A piece of work for the world outside a screen, written down as a value: save, open, look at the clock. */
public interface Effect {}

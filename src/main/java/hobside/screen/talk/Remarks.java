package hobside.screen.talk;
final class Remarks { private Remarks() {} static void draw(WordsScreen s, hobside.screen.Frame f) {} }

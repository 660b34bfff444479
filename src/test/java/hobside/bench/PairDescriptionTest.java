package hobside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairDescriptionTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "none", value = {
        "Beef, ground, 75% lean meat / 25% fat, raw | crumbles, pan-browned | '' | beef-mince | pan-browned",
        "Beef, ground, 75% lean meat / 25% fat, raw | patty, pan-broiled | '' | beef-mince | pan-fried",
        "Beef, ground, hamburger, raw | loaf, baked | '' | beef-mince | baked",
        "Beef, chuck, clod, separable lean and fat, raw | broiled | '' | beef-cut | grilled",
        "Beef, variety meats and by-products, liver, raw | braised | '' | offal | braised",
        "Veal, ground, raw | broiled | '' | beef-mince | grilled",
        "Veal, loin, separable lean only, raw | method not stated | '' | veal-cut | roasted",
        "Pork, fresh, loin, raw | roasted | '' | pork-cut | roasted",
        "Pork, cured, ham, whole, unheated | pan-broil | '' | pork-cut | pan-fried",
        "Pork, cured, bacon, unprepared | microwaved | '' | bacon | microwaved",
        "Pork sausage, link/patty, unheated | patty, microwaved | '' | sausage | microwaved",
        "Frankfurter, beef, unheated | boiled | '' | sausage | boiled",
        "Lamb, ground, raw | broiled | '' | lamb-mince | grilled",
        "Lamb, New Zealand, imported, flap, raw | slow roasted | '' | lamb-cut | roasted",
        "Chicken, cornish game hens, meat and skin, raw | roasted | '' | poultry-cut | roasted",
        "Chicken, broilers or fryers, meat and skin and giblets and neck, raw | fried, batter | batter | poultry-cut | deep-fried",
        "Chicken, broilers or fryers, wing, meat and skin, raw | fried, flour | flour | poultry-cut | pan-fried",
        "Chicken, broilers or fryers, giblets, raw | simmered | '' | offal | boiled",
        "Ground turkey, 85% lean, 15% fat, raw | pan-broiled crumbles | '' | poultry-mince | pan-browned",
        "Duck, domesticated, meat and skin, raw | roasted | '' | poultry-cut | roasted",
        "Game meat, rabbit, domesticated, raw | stewed | '' | game-cut | stewed",
        "Game meat, bison, ground, raw | pan-broiled | '' | game-cut | pan-fried",
        "Emu, fan fillet, raw | broiled | '' | game-cut | grilled",
        "Ostrich, ground, raw | pan-broiled | '' | game-cut | pan-fried",
        "Fish, salmon, chinook, raw | dry heat | '' | fish | baked",
        "Crustaceans, crab, blue, raw | moist heat | '' | fish | boiled",
        "Mollusks, clam, mixed species, raw | breaded and fried | breaded | fish | deep-fried",
        "Luncheon meat, pork, canned | pan-fried | '' | tinned-meat | pan-fried"})
    void the_wording_of_a_pair_gives_its_class_and_method(String food, String method, String coating, String melts, String cooked) {
        PairDescription read = PairDescription.of(food, method, coating);
        assertEquals(melts + " " + cooked, read.melts().word() + " " + read.method().word());
    }
}

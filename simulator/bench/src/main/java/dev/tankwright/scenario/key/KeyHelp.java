package dev.tankwright.scenario.key;

import java.util.HashMap;
import java.util.Map;

/** One line on every key of a scenario file, as an editor shows it. */
public final class KeyHelp {
  private static final Map<String, String> FILE = new HashMap<>();
  private static final Map<String, String> BATH = new HashMap<>();
  private static final Map<String, String> STOCK = new HashMap<>();
  private static final Map<String, String> ENTRY = new HashMap<>();
  private static final Map<String, String> REQUIREMENT = new HashMap<>();

  static {
    FILE.put("scenario", "Title, one line");
    FILE.put("extends", "Another scenario's file, relative to this one's folder, to start from");
    FILE.put("purpose", "What the scenario shows, in one sentence");
    FILE.put("device", "Id in events: small letters, digits and hyphens; bench-1 unless given");
    FILE.put("clock", "Simulated wall clock at the start, with its offset");
    FILE.put("seed", "Seed of all chance; 1 unless given");
    FILE.put("duration", "Length of the run, 1 s to 24 h");
    FILE.put("profile", "The bath: a built-in name, or a profile's file; bench-6l unless given");
    FILE.put("bath", "How the bath stands at the start");
    FILE.put("solution", "What the solution is made of at the start");
    FILE.put("load", "What hangs in the basket");
    FILE.put("controller", "Parameters that differ from the six-litre bench bath");
    FILE.put("timeline", "What is done; a list of entries");
    FILE.put("requirements", "What must be true; a list of at least one");
    BATH.put("fill", "Volume in the tank, 0 L to the brim");
    BATH.put("temperature", "Of solution and tank, 1 to 95 °C");
    BATH.put("ambient", "Of the room, 5 to 40 °C; 21 °C unless given");
    BATH.put("humidity", "Of the room, 5 to 95 %; 50 % unless given");
    BATH.put("dissolved-gas", "Share of saturation, 0 to 120 %; 100 % unless given");
    BATH.put("detergent", "Share of the right dose, 0 to 100 %; 100 % unless given");
    BATH.put("load", "Mass of the instruments in the basket, 0 to 20 kg");
    BATH.put("overlap", "Share of the load that hides behind other instruments");
    STOCK.put("chemistry", "Told to the controller at every START that says nothing else");
    STOCK.put("chemistry-maximum", "Hottest temperature that the chemistry's instructions allow");
    STOCK.put("lot", "Lot of the chemistry, for people alone");
    STOCK.put("dissolved-gas", BATH.get("dissolved-gas"));
    STOCK.put("detergent", BATH.get("detergent"));
    STOCK.put("mass", BATH.get("load"));
    STOCK.put("overlap", BATH.get("overlap"));
    STOCK.put("kind", "Kind of load, for people alone");
    moments();
    actions();
    requirements();
  }

  private static void moments() {
    ENTRY.put("name", "What other entries, and variants, know this entry by");
    ENTRY.put("at", "Moment of the run, whatever the other entries do");
    ENTRY.put("on", "Phase in whose first step the entry is due");
    ENTRY.put("when", "Condition; the entry is due when it becomes true");
    ENTRY.put("after", "How long after the phase was entered, or the condition became true");
    ENTRY.put("then", "Time after the entry that is waited for was done");
    ENTRY.put("from", "Name of the entry to wait for instead of the one before; or start");
    ENTRY.put("every", "Time after which the entry is done again, 10 ms or more");
    ENTRY.put("times", "How often it is done in all");
    ENTRY.put("until", "Latest moment of the run at which it is due again");
  }

  private static void actions() {
    ENTRY.put("command", "Key that the operator presses");
    ENTRY.put("programme", "Programme that is started");
    ENTRY.put("setpoint", "Temperature to clean at");
    ENTRY.put("degas", "Degassing time, where degassing is owed");
    ENTRY.put("clean", "Cleaning time");
    ENTRY.put("chemistry", "What the operator says of the chemistry");
    ENTRY.put("chemistry-maximum", STOCK.get("chemistry-maximum"));
    ENTRY.put("operator", "Who starts the cycle, for the events; the controller does not know");
    ENTRY.put("load", "What the facility calls the load, for the events");
    ENTRY.put("foil", "hang, or the verdict on the foil with ACKNOWLEDGE");
    ENTRY.put("basket", "How the basket is moved");
    ENTRY.put("cut-power", "How long the whole device loses its power");
    ENTRY.put("set-clock", "How far the host's clock is set, back with a minus");
    ENTRY.put("lid", "Where the lid is moved to");
    ENTRY.put("break", "Part that breaks");
    ENTRY.put("size", "By how much it breaks");
    ENTRY.put("for", "How long it stays broken; for good unless given");
    ENTRY.put("mend", "Part that is whole again");
    ENTRY.put("force", "Values put on the controller's pins");
    ENTRY.put("release", "Pin that says again what is, or all");
    ENTRY.put("fill", "Volume that is poured in");
    ENTRY.put("temperature", "Of what is poured in, 1 to 95 °C");
    ENTRY.put("detergent", BATH.get("detergent"));
  }

  private static void requirements() {
    REQUIREMENT.put("name", "Unique in the file, at most 120 characters");
    REQUIREMENT.put("id", "Safety requirement that this shows, SR- and two digits");
    REQUIREMENT.put("always", "Condition that holds in every step");
    REQUIREMENT.put("never", "Condition that holds in no step");
    REQUIREMENT.put("while", "Only steps in which this condition holds count");
    REQUIREMENT.put("within", "Longest time from 'after' to 'holds'");
    REQUIREMENT.put("after", "Trigger: the moment at which this condition becomes true");
    REQUIREMENT.put("holds", "Condition that must hold");
    REQUIREMENT.put("eventually", "Condition that holds in some step");
    REQUIREMENT.put("before", "Latest moment of the run at which it first holds");
    REQUIREMENT.put("stays", "Condition that stays true for a time");
    REQUIREMENT.put("for", "How long it stays true at least");
    REQUIREMENT.put("until", "Condition up to which 'holds' must hold");
    REQUIREMENT.put("count", "Condition of which it is counted how often it becomes true");
    REQUIREMENT.put("at-least", "Fewest times");
    REQUIREMENT.put("at-most", "Most times");
  }

  private KeyHelp() {}

  public static String file(String key) {
    return help(FILE, key);
  }

  public static String bath(String key) {
    return help(BATH, key);
  }

  public static String stock(String key) {
    return help(STOCK, key);
  }

  public static String entry(String key) {
    return help(ENTRY, key);
  }

  public static String requirement(String key) {
    return help(REQUIREMENT, key);
  }

  private static String help(Map<String, String> block, String key) {
    String text = block.get(key);
    if (text == null) {
      throw new IllegalStateException("no help is written for the key '" + key + "'");
    }
    return text;
  }
}

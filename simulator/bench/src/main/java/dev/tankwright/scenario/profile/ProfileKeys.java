package dev.tankwright.scenario.profile;

import static dev.tankwright.scenario.block.KeyBuilder.key;

import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import java.util.ArrayList;
import java.util.List;

/** The keys of a profile's file: its name, what it starts from, and the values of a bath. */
public final class ProfileKeys {
  /** Its name. */
  static final Key PROFILE =
      key("profile", new KeyType.Line(80), Origin.TRADE, "its name")
          .required("Bench bath of the instrument room")
          .make();

  /** The bath that it starts from. */
  static final Key EXTENDS =
      key(
              "extends",
              KeyType.words(BuiltInBaths.names()),
              Origin.TRADE,
              "the bath that it starts from, and of which it says only what differs")
          .make();

  /** All of them. */
  public static final KeyBlock BLOCK = block();

  private ProfileKeys() {}

  private static KeyBlock block() {
    List<Key> keys = new ArrayList<>(List.of(PROFILE, EXTENDS));
    for (ProfileKey key : ProfileKey.values()) {
      keys.add(key.entry());
    }
    return new KeyBlock("the profile", keys);
  }
}

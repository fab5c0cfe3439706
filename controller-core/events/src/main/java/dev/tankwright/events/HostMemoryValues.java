package dev.tankwright.events;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.io.DataInputStream;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the parts of a host's memory, as {@link HostMemoryFields} writes them. One thread. */
final class HostMemoryValues {
  private final DataInputStream in;

  HostMemoryValues(DataInputStream in) {
    this.in = in;
  }

  Optional<OpenCycle> cycle() throws IOException {
    if (!in.readBoolean()) {
      return Optional.empty();
    }
    int number = in.readInt();
    Optional<Recipe> recipe = recipe();
    CycleOrder order = new CycleOrder(recipe, new LoadReference(in.readUTF(), in.readUTF()));
    int count = in.readInt();
    if (count < 0 || count > OpenCycle.PAUSES) {
      throw new IllegalArgumentException(count + " pauses; at most " + OpenCycle.PAUSES);
    }
    List<Pause> pauses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pauses.add(
          new Pause(
              instant(), Cause.valueOf(in.readUTF()), Phase.valueOf(in.readUTF()), duration()));
    }
    return Optional.of(new OpenCycle(number, order, pauses));
  }

  private Optional<Recipe> recipe() throws IOException {
    if (!in.readBoolean()) {
      return Optional.empty();
    }
    return Optional.of(
        new Recipe(
            Programme.valueOf(in.readUTF()),
            in.readInt(),
            in.readInt(),
            in.readInt(),
            new Chemistry(in.readBoolean(), in.readInt())));
  }

  Optional<SolutionInUse> solution() throws IOException {
    if (!in.readBoolean()) {
      return Optional.empty();
    }
    String lot = in.readUTF();
    Instant filled = instant();
    boolean isDrained = in.readBoolean();
    Instant drained = instant();
    Optional<Instant> end = isDrained ? Optional.of(drained) : Optional.empty();
    return Optional.of(new SolutionInUse(lot, filled, end, in.readInt()));
  }

  private Instant instant() throws IOException {
    return Instant.ofEpochSecond(in.readLong(), in.readInt());
  }

  private Duration duration() throws IOException {
    return Duration.ofSeconds(in.readLong(), in.readInt());
  }
}

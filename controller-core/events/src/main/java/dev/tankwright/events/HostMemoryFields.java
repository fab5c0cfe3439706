package dev.tankwright.events;

import dev.tankwright.controller.board.Recipe;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Writes the parts of a host's memory, as {@link HostMemoryValues} reads them. One thread. */
final class HostMemoryFields {
  private final DataOutputStream out;

  HostMemoryFields(DataOutputStream out) {
    this.out = out;
  }

  void cycle(Optional<OpenCycle> cycle) throws IOException {
    out.writeBoolean(cycle.isPresent());
    if (cycle.isPresent()) {
      OpenCycle open = cycle.get();
      out.writeInt(open.number());
      recipe(open.order().recipe());
      out.writeUTF(open.order().reference().operator());
      out.writeUTF(open.order().reference().load());
      out.writeInt(open.pauses().size());
      for (Pause pause : open.pauses()) {
        pause(pause);
      }
    }
  }

  private void recipe(Optional<Recipe> known) throws IOException {
    out.writeBoolean(known.isPresent());
    if (known.isPresent()) {
      Recipe recipe = known.get();
      out.writeUTF(recipe.programme().name());
      out.writeInt(recipe.setpointMilliC());
      out.writeInt(recipe.degasMs());
      out.writeInt(recipe.cleanMs());
      out.writeBoolean(recipe.chemistry().enzymatic());
      out.writeInt(recipe.chemistry().maximumMilliC());
    }
  }

  private void pause(Pause pause) throws IOException {
    instant(pause.at());
    out.writeUTF(pause.cause().name());
    out.writeUTF(pause.phase().name());
    duration(pause.length());
  }

  void solution(Optional<SolutionInUse> solution) throws IOException {
    out.writeBoolean(solution.isPresent());
    if (solution.isPresent()) {
      SolutionInUse known = solution.get();
      out.writeUTF(known.lot());
      instant(known.filled());
      out.writeBoolean(known.drained().isPresent());
      instant(known.drained().orElse(known.filled()));
      out.writeInt(known.cycles());
    }
  }

  private void instant(Instant moment) throws IOException {
    out.writeLong(moment.getEpochSecond());
    out.writeInt(moment.getNano());
  }

  private void duration(Duration length) throws IOException {
    out.writeLong(length.getSeconds());
    out.writeInt(length.getNano());
  }
}

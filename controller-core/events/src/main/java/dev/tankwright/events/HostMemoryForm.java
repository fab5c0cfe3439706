package dev.tankwright.events;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * What a host remembers, as octets: a mark, the version of the form, the contents, and a CRC-32
 * over all of it. Numbers stand with the highest octet first, texts in the form of {@link
 * java.io.DataOutput#writeUTF}. What another version has written is refused, not guessed at.
 * Stateless, thread-safe.
 */
public final class HostMemoryForm {
  private static final int MARK = 0x746b686d; // "tkhm" in ASCII
  private static final int VERSION = 1;

  private HostMemoryForm() {}

  /** The octets of a memory. */
  public static byte[] write(HostMemory memory) {
    ByteArrayOutputStream octets = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(octets)) {
      out.writeInt(MARK);
      out.writeByte(VERSION);
      out.writeLong(memory.link().sequence());
      out.writeUTF(memory.link().chain());
      out.writeInt(memory.cycles());
      HostMemoryFields fields = new HostMemoryFields(out);
      fields.cycle(memory.cycle());
      fields.solution(memory.solution());
      out.writeInt(sum(octets.toByteArray(), octets.size()));
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot be written to memory", e);
    }
    return octets.toByteArray();
  }

  /**
   * The memory of some octets.
   *
   * @throws NotAMemoryException when they are damaged, or of another version, or no memory at all;
   *     the message says which
   */
  public static HostMemory read(byte[] octets) throws NotAMemoryException {
    int end = octets.length - Integer.BYTES;
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(octets))) {
      if (in.readInt() != MARK) {
        throw new NotAMemoryException("this is not a host's memory: it starts differently");
      }
      int version = in.readUnsignedByte();
      if (version != VERSION) {
        throw new NotAMemoryException(
            "the host's memory is of version %d, and this program reads version %d"
                .formatted(version, VERSION));
      }
      if (end < 0 || sum(octets, end) != tail(octets, end)) {
        throw new NotAMemoryException("the host's memory is damaged: its check value is wrong");
      }
      return contents(in, end);
    } catch (EOFException e) {
      throw new NotAMemoryException("the host's memory ends too early", e);
    } catch (IOException | IllegalArgumentException | DateTimeException e) {
      throw new NotAMemoryException("the host's memory contradicts itself: " + e.getMessage(), e);
    }
  }

  private static HostMemory contents(DataInputStream in, int end) throws IOException {
    ChainLink link = new ChainLink(in.readLong(), in.readUTF());
    int cycles = in.readInt();
    HostMemoryValues values = new HostMemoryValues(in);
    HostMemory memory = new HostMemory(link, cycles, values.cycle(), values.solution());
    if (in.available() != Integer.BYTES) {
      throw new IllegalArgumentException("something follows the contents of " + end + " octets");
    }
    return memory;
  }

  private static int sum(byte[] octets, int end) {
    CRC32 crc = new CRC32();
    crc.update(octets, 0, end);
    return (int) crc.getValue();
  }

  private static int tail(byte[] octets, int from) throws IOException {
    byte[] last = Arrays.copyOfRange(octets, from, octets.length);
    return new DataInputStream(new ByteArrayInputStream(last)).readInt();
  }
}

package dev.tankwright.events.mqtt;

import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Blocks reading on a connection until its first byte has been written.
 *
 * <p>Paho starts its reader, writer and callback threads one by one and waits, without a limit and
 * ignoring interrupts, until it has seen each of them run. If one has ended by then, it waits until
 * the process ends. So the reader is blocked until the first write, which comes after the last of
 * these waits; in MQTT the server sends nothing before the client's CONNECT.
 */
final class ReaderGate {
  private final CountDownLatch spoken = new CountDownLatch(1);

  boolean await(long limit, TimeUnit unit) throws InterruptedException {
    return spoken.await(limit, unit);
  }

  /** Lets nothing be heard, not even the end, before the first byte has been said. */
  InputStream deafUntilSpoken(InputStream in) {
    return new FilterInputStream(in) {
      @Override
      public int available() throws IOException {
        return spoken.getCount() > 0 ? 0 : super.available();
      }

      @Override
      public int read() throws IOException {
        awaitSpoken();
        return super.read();
      }

      @Override
      public int read(byte[] bytes, int offset, int length) throws IOException {
        awaitSpoken();
        return super.read(bytes, offset, length);
      }
    };
  }

  OutputStream noticed(OutputStream stream) {
    return new FilterOutputStream(stream) {
      @Override
      public void write(int b) throws IOException {
        spoken.countDown();
        out.write(b);
      }

      @Override
      public void write(byte[] bytes, int offset, int length) throws IOException {
        spoken.countDown();
        out.write(bytes, offset, length);
      }
    };
  }

  private void awaitSpoken() throws IOException {
    try {
      spoken.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted before the first byte was sent");
    }
  }
}

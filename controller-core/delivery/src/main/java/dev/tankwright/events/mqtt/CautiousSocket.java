package dev.tankwright.events.mqtt;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;

/** A plain socket that reads nothing before its first write, see {@link ReaderGate}. */
final class CautiousSocket extends Socket {
  private final ReaderGate word;

  CautiousSocket(ReaderGate word) {
    this.word = word;
  }

  @Override
  public InputStream getInputStream() throws IOException {
    return word.deafUntilSpoken(super.getInputStream());
  }

  @Override
  public OutputStream getOutputStream() throws IOException {
    return word.noticed(super.getOutputStream());
  }
}

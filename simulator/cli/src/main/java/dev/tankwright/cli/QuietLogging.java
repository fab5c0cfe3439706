package dev.tankwright.cli;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.layout.TTLLLayout;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ConfiguratorRank;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.encoder.LayoutWrappingEncoder;
import ch.qos.logback.core.joran.spi.ConsoleTarget;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.util.List;

/**
 * Logging as a person at the command line wants it: warnings on standard error, and nothing at all
 * from the libraries of the embedded broker, whose failures are told in a run's report.
 *
 * <p>Found by Logback as a service. It spares the reading of an XML file, which takes longer than
 * opening the broker's port. Where the system property {@code logback.configurationFile} names a
 * file, that file is used instead.
 */
@ConfiguratorRank(ConfiguratorRank.CUSTOM_HIGH_PRIORITY)
public final class QuietLogging extends ContextAwareBase implements Configurator {
  private static final List<String> SILENT =
      List.of("org.apache.activemq", "io.netty", "org.apache.commons", "org.eclipse.paho");

  /** Made by Logback. */
  public QuietLogging() {}

  @Override
  public ExecutionStatus configure(LoggerContext context) {
    if (System.getProperty("logback.configurationFile") != null) {
      return ExecutionStatus.INVOKE_NEXT_IF_ANY;
    }
    SILENT.forEach(name -> context.getLogger(name).setLevel(Level.OFF));
    Logger root = context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    root.setLevel(Level.WARN);
    root.addAppender(standardError(context));
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }

  private static ConsoleAppender<ILoggingEvent> standardError(LoggerContext context) {
    TTLLLayout layout = new TTLLLayout();
    layout.setContext(context);
    layout.start();
    LayoutWrappingEncoder<ILoggingEvent> encoder = new LayoutWrappingEncoder<>();
    encoder.setContext(context);
    encoder.setLayout(layout);
    ConsoleAppender<ILoggingEvent> appender = new ConsoleAppender<>();
    appender.setContext(context);
    appender.setName("stderr");
    appender.setTarget(ConsoleTarget.SystemErr.getName());
    appender.setEncoder(encoder);
    appender.start();
    return appender;
  }
}

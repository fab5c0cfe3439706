package dev.tankwright.bench.events;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The AsyncAPI document, with every reference followed: what a channel takes. */
final class AsyncApi {
  private final JsonNode document;
  private final Map<String, Map<String, Schema>> channels = new HashMap<>();

  private AsyncApi(JsonNode document) throws IOException {
    this.document = document;
    for (Map.Entry<String, JsonNode> channel : document.path("channels").properties()) {
      Map<String, Schema> messages = new HashMap<>();
      for (JsonNode message : channel.getValue().path("messages")) {
        JsonNode resolved = resolve(message);
        messages.put(resolved.path("name").asText(), Contract.of(resolved.path("payload")));
      }
      channels.put(channel.getKey(), messages);
    }
  }

  static AsyncApi read() throws IOException {
    return new AsyncApi(text());
  }

  /** The document as it stands in its file. */
  static JsonNode text() throws IOException {
    String yaml = Files.readString(Contract.folder().resolve("asyncapi.yaml"));
    return Contract.JSON.valueToTree(new Load(LoadSettings.builder().build()).loadFromString(yaml));
  }

  JsonNode document() {
    return document;
  }

  /** Names of the messages of a channel. */
  List<String> messages(String channel) {
    return channels.get(channel).keySet().stream().sorted().toList();
  }

  /** What is wrong with a message by the channel on which it was sent; empty when nothing is. */
  List<String> faults(String channel, JsonNode payload) {
    List<String> matching = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    channels
        .get(channel)
        .forEach(
            (name, schema) -> {
              List<String> found =
                  Contract.faults(schema, payload).stream().map(e -> name + ": " + e).toList();
              if (found.isEmpty()) {
                matching.add(name);
              } else if (name.equals(payload.path("type").asText(name))) {
                faults.addAll(found);
              }
            });
    if (matching.size() == 1) {
      return List.of();
    }
    faults.add(channel + " has " + matching.size() + " messages that this can be: " + matching);
    return faults;
  }

  // References are followed into the document itself and into the folder of schemas.
  private JsonNode resolve(JsonNode node) throws IOException {
    if (node.isArray()) {
      ArrayNode all = Contract.JSON.createArrayNode();
      for (JsonNode element : node) {
        all.add(resolve(element));
      }
      return all;
    }
    if (!node.isObject()) {
      return node;
    }
    if (node.has("$ref")) {
      return resolve(target(node.path("$ref").asText()));
    }
    ObjectNode resolved = Contract.JSON.createObjectNode();
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      if (!member.getKey().equals("$id") && !member.getKey().equals("$schema")) {
        resolved.set(member.getKey(), resolve(member.getValue()));
      }
    }
    return resolved;
  }

  private JsonNode target(String reference) throws IOException {
    JsonNode found;
    if (reference.startsWith("#/")) {
      found = document.at(reference.substring(1));
    } else {
      Path file = Contract.folder().resolve(reference).normalize();
      found = Contract.JSON.readTree(Files.readAllBytes(file));
    }
    if (found.isMissingNode()) {
      throw new IllegalStateException("the document has nothing at " + reference);
    }
    return found;
  }
}

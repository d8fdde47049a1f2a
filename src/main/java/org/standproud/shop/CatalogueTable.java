package org.standproud.shop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.setup.request.CatalogueShelf;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The tables of the catalogue. */
final class CatalogueTable {

  private static final JsonMapper JSON = JsonMapper.shared();

  private final JdbcClient client;

  CatalogueTable(DataSource dataSource) {
    this.client = JdbcClient.create(dataSource);
  }

  long head() {
    return client.sql("select sequence from catalogue_head").query(Long.class).single();
  }

  /** The same, and locks the catalogue until the transaction ends. */
  long lockHead() {
    return client.sql("select sequence from catalogue_head for update").query(Long.class).single();
  }

  CatalogueSnapshot read(long sequence) {
    Map<CatalogueShelf, Map<String, CatalogueSnapshot.Item>> items =
        new EnumMap<>(CatalogueShelf.class);
    client
        .sql(
            "select i.shelf, i.name, i.revision, i.told from catalogue_item i join"
                + " (select shelf, name, max(sequence) as last from catalogue_item"
                + " where sequence <= ? group by shelf, name) l"
                + " on i.shelf = l.shelf and i.name = l.name and i.sequence = l.last"
                + " where i.told is not null order by i.shelf, i.name")
        .param(sequence)
        .query(
            rs -> {
              CatalogueSnapshot.Item item =
                  new CatalogueSnapshot.Item(new CanonicalJson(rs.getString("told")));
              if (!item.revision().equals(rs.getString("revision"))) {
                throw new IllegalArgumentException(
                    rs.getString("name") + " was changed in the database");
              }
              items
                  .computeIfAbsent(shelf(rs), s -> new LinkedHashMap<>())
                  .put(rs.getString("name"), item);
            });
    return CatalogueSnapshot.of(sequence, items);
  }

  void insert(
      CatalogueSnapshot next,
      List<CatalogueSnapshot.Change> changes,
      String author,
      Instant time,
      String note) {
    client
        .sql(
            "insert into catalogue_revision (sequence, revision, made_at, author, note)"
                + " values (?, ?, ?, ?, ?)")
        .params(
            next.sequence(),
            next.catalogue().revision(),
            time.atOffset(ZoneOffset.UTC),
            author,
            note)
        .update();
    for (CatalogueSnapshot.Change change : changes) {
      CanonicalJson item = change.content();
      client
          .sql(
              "insert into catalogue_item (sequence, shelf, name, revision, told)"
                  + " values (?, ?, ?, ?, ?)")
          .params(next.sequence(), change.shelf().words(), change.name())
          .param(item == null ? null : item.sha256())
          .param(item == null ? null : item.text())
          .update();
    }
    client.sql("update catalogue_head set sequence = ?").param(next.sequence()).update();
  }

  /** A revision without its items. */
  record Row(long sequence, String revision, Instant time, String author, String note) {}

  /** Covers every column of a revision and of its changed items. */
  static String digest(Row row, List<CatalogueSnapshot.Change> changes) {
    ObjectNode entry = JSON.valueToTree(row);
    ArrayNode items = entry.putArray("items");
    changes.stream()
        .sorted(
            Comparator.comparing((CatalogueSnapshot.Change change) -> change.shelf().words())
                .thenComparing(CatalogueSnapshot.Change::name))
        .forEach(
            change -> {
              CanonicalJson content = change.content();
              items
                  .addObject()
                  .put("shelf", change.shelf().words())
                  .put("name", change.name())
                  .put("told", content == null ? "" : content.sha256());
            });
    return CanonicalJson.of(entry).sha256();
  }

  /** The digest of each revision as stored now. */
  SortedMap<Long, String> digests() {
    Map<Long, List<CatalogueSnapshot.Change>> changes = new TreeMap<>();
    client
        .sql("select sequence, shelf, name, revision, told from catalogue_item")
        .query(
            rs -> {
              CanonicalJson content = json(rs.getString("told"));
              String revision = rs.getString("revision");
              boolean right = Objects.equals(revision, content == null ? null : content.sha256());
              changes
                  .computeIfAbsent(rs.getLong("sequence"), s -> new ArrayList<>())
                  .add(
                      new CatalogueSnapshot.Change(
                          shelf(rs),
                          rs.getString("name") + (right ? "" : " " + revision),
                          content));
            });
    SortedMap<Long, String> digests = new TreeMap<>();
    client
        .sql("select * from catalogue_revision")
        .query((rs, n) -> revision(rs, List.of()))
        .list()
        .forEach(
            r ->
                digests.put(
                    r.sequence(),
                    digest(
                        new Row(r.sequence(), r.revision(), r.time(), r.author(), r.note()),
                        changes.getOrDefault(r.sequence(), List.of()))));
    return digests;
  }

  List<CatalogueRevision> history(CatalogueShelf shelf, String name) {
    return client
        .sql(
            "select r.*, i.revision as item, i.told from catalogue_item i"
                + " join catalogue_revision r on r.sequence = i.sequence"
                + " where i.shelf = ? and i.name = ? order by i.sequence desc")
        .params(shelf.words(), name)
        .query(
            (rs, n) ->
                revision(
                    rs,
                    List.of(
                        new CatalogueRevision.Changed(
                            shelf, name, rs.getString("item"), json(rs.getString("told"))))))
        .list();
  }

  List<CatalogueRevision> revisions(@Nullable String revision, long before, int most) {
    JdbcClient.StatementSpec found =
        revision == null
            ? client
                .sql(
                    "select * from catalogue_revision where sequence < ? order by sequence desc"
                        + " fetch first "
                        + most
                        + " rows only")
                .param(before)
            : client
                .sql("select * from catalogue_revision where revision = ? order by sequence desc")
                .param(revision);
    return found.query((rs, n) -> revision(rs, List.of())).list().stream()
        .map(r -> r.with(changed(r.sequence())))
        .toList();
  }

  private List<CatalogueRevision.Changed> changed(long sequence) {
    return client
        .sql("select * from catalogue_item where sequence = ? order by shelf, name")
        .param(sequence)
        .query(
            (rs, n) ->
                new CatalogueRevision.Changed(
                    shelf(rs), rs.getString("name"), rs.getString("revision"), null))
        .list();
  }

  private static CatalogueRevision revision(ResultSet rs, List<CatalogueRevision.Changed> changed)
      throws SQLException {
    return new CatalogueRevision(
        rs.getLong("sequence"),
        rs.getString("revision"),
        rs.getObject("made_at", OffsetDateTime.class).toInstant(),
        rs.getString("author"),
        rs.getString("note"),
        changed);
  }

  private static CatalogueShelf shelf(ResultSet rs) throws SQLException {
    return CatalogueShelf.valueOf(rs.getString("shelf").toUpperCase(Locale.ROOT));
  }

  private static @Nullable CanonicalJson json(@Nullable String text) {
    return text == null ? null : new CanonicalJson(text);
  }
}

package org.standproud.contract;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/** Reads the descriptions of schemas and their fields from the javadoc of the records. */
final class ContractJavadoc {

  /** Key of the description of a schema itself. */
  static final String SCHEMA = "";

  private static final Pattern SCHEMA_NAME = Pattern.compile("@Schema\\(.*?name = \"(\\w+)\".*");
  private static final Pattern JSON_NAME = Pattern.compile("@JsonProperty\\(.*?\"(\\w+)\".*");
  private static final Pattern NULLABLE_TYPE = Pattern.compile("[\\w.]*@[\\w.()]*Nullable.*");

  private final Map<String, List<Described>> byName = new HashMap<>();
  private final DocTrees docs;

  /** A record with a description for each field; the name of an optional one ends with "?". */
  private record Described(
      String simpleName, boolean named, boolean generic, Map<String, String> words, String whole) {}

  private ContractJavadoc(DocTrees docs) {
    this.docs = docs;
  }

  /** Reads every record below a folder of sources. */
  static ContractJavadoc read(Path folder) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null);
        Stream<Path> files = Files.walk(folder)) {
      List<File> sources =
          files.filter(f -> f.toString().endsWith(".java")).sorted().map(Path::toFile).toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  manager,
                  null,
                  List.of("-proc:none"),
                  null,
                  manager.getJavaFileObjectsFromFiles(sources));
      ContractJavadoc javadoc = new ContractJavadoc(DocTrees.instance(task));
      for (CompilationUnitTree unit : task.parse()) {
        javadoc.add(unit);
      }
      return javadoc;
    }
  }

  /**
   * The descriptions of a schema.
   *
   * @param schema its name: of a record, or of a generic record followed by its argument
   * @param known fields it had before, to choose between records of one name
   */
  Map<String, String> words(String schema, Set<String> known) {
    List<Described> named = byName.getOrDefault(schema, List.of());
    if (named.stream().anyMatch(Described::named)) {
      named = named.stream().filter(Described::named).toList();
    }
    if (named.isEmpty()) {
      named =
          byName.values().stream()
              .flatMap(List::stream)
              .filter(record -> record.generic() && schema.startsWith(record.simpleName()))
              .toList();
    }
    return named.stream()
        .max(
            Comparator.comparingLong(
                r -> r.words().keySet().stream().filter(known::contains).count()))
        .map(record -> withParts(record.words()))
        .orElseThrow(() -> new IllegalStateException("no record describes " + schema));
  }

  /** Fields of an unwrapped part are fields of the whole. */
  private Map<String, String> withParts(Map<String, String> words) {
    Map<String, String> all = new LinkedHashMap<>();
    words.forEach(
        (field, text) -> {
          if (field.startsWith("@")) {
            byName.get(field.substring(1)).stream()
                .filter(part -> !part.named())
                .max(Comparator.comparingInt(part -> part.words().size()))
                .orElseThrow()
                .words()
                .forEach(all::putIfAbsent);
          } else {
            all.put(field, text);
          }
        });
    return all;
  }

  private void add(CompilationUnitTree unit) {
    new TreePathScanner<@Nullable Void, @Nullable Void>() {
      @Override
      public @Nullable Void visitClass(ClassTree type, @Nullable Void nothing) {
        DocCommentTree doc = docs.getDocCommentTree(getCurrentPath());
        if (type.getKind() == Tree.Kind.RECORD && doc != null) {
          Described record = described(type, doc);
          byName.computeIfAbsent(record.whole(), n -> new ArrayList<>()).add(record);
        }
        return super.visitClass(type, nothing);
      }
    }.scan(unit, null);
  }

  private Described described(ClassTree type, DocCommentTree doc) {
    Map<String, String> params = new HashMap<>();
    for (DocTree tag : doc.getBlockTags()) {
      if (tag instanceof ParamTree param && !param.isTypeParameter()) {
        params.put(param.getName().toString(), sentence(text(param.getDescription())));
      }
    }
    Map<String, String> words = new LinkedHashMap<>();
    words.put(SCHEMA, sentence(text(doc.getFullBody())));
    for (Tree member : type.getMembers()) {
      if (member instanceof VariableTree field
          && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
        addField(field, params, words);
      }
    }
    String simple = type.getSimpleName().toString();
    String name = annotation(type.getModifiers().getAnnotations(), SCHEMA_NAME);
    return new Described(
        simple,
        name != null,
        !type.getTypeParameters().isEmpty(),
        words,
        name == null ? simple : name);
  }

  private static void addField(
      VariableTree field, Map<String, String> params, Map<String, String> words) {
    List<? extends AnnotationTree> annotations = field.getModifiers().getAnnotations();
    if (has(annotations, "JsonIgnore")) {
      return;
    }
    if (has(annotations, "JsonUnwrapped")) {
      words.put("@" + field.getType(), "");
      return;
    }
    boolean optional =
        has(annotations, "Nullable") || NULLABLE_TYPE.matcher(field.getType().toString()).matches();
    String json = annotation(annotations, JSON_NAME);
    String name = json == null ? field.getName().toString() : json;
    words.put(optional ? name + "?" : name, params.getOrDefault(field.getName().toString(), ""));
  }

  private static boolean has(List<? extends AnnotationTree> annotations, String name) {
    return annotations.stream().anyMatch(one -> one.getAnnotationType().toString().endsWith(name));
  }

  private static @Nullable String annotation(
      List<? extends AnnotationTree> annotations, Pattern value) {
    return annotations.stream()
        .map(one -> value.matcher(one.toString().replaceAll("\\s+", " ")))
        .filter(Matcher::matches)
        .map(found -> found.group(1))
        .findFirst()
        .orElse(null);
  }

  /** The text up to the second paragraph. */
  private String text(List<? extends DocTree> parts) {
    StringBuilder text = new StringBuilder();
    for (DocTree part : parts) {
      if (part instanceof StartElementTree) {
        break;
      } else if (part instanceof TextTree words) {
        text.append(words.getBody());
      } else if (part instanceof LiteralTree literal) {
        text.append(literal.getBody().getBody());
      } else if (part instanceof LinkTree link) {
        text.append(link.getReference().getSignature());
      } else if (part instanceof EntityTree entity) {
        text.append(docs.getCharacters(entity));
      }
    }
    return text.toString().strip().replaceAll("\\s+", " ");
  }

  /** With a capital, unless it begins with a symbol such as a_p, and a full stop. */
  private static String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    boolean word = text.matches("(?:a |\\p{Lower}\\p{Lower}).*") && !text.matches("\\w*_.*");
    String begun = word ? Character.toUpperCase(text.charAt(0)) + text.substring(1) : text;
    return begun.endsWith(".") ? begun : begun + ".";
  }
}

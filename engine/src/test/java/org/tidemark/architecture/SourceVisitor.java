package org.tidemark.architecture;

import com.sun.source.tree.CatchTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnionTypeTree;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import java.util.List;
import java.util.Set;
import javax.lang.model.type.TypeKind;
import org.jspecify.annotations.Nullable;

/** Walks one file for {@link SourceScan}. */
final class SourceVisitor extends TreeScanner<@Nullable Void, @Nullable Void> {
  private static final Set<String> CATCH_ALL =
      Set.of("Throwable", "Exception", "RuntimeException", "Error");
  private static final Set<TypeKind> BINARY = Set.of(TypeKind.DOUBLE, TypeKind.FLOAT);

  private final CompilationUnitTree unit;
  private final SourcePositions positions;
  private final String name;
  private final SourceScan scan;
  private final boolean quiet;

  SourceVisitor(CompilationUnitTree unit, SourcePositions positions, String name, SourceScan scan) {
    this.unit = unit;
    this.positions = positions;
    this.name = name;
    this.scan = scan;
    this.quiet =
        QuietFences.QUIET.stream().anyMatch(room -> name.contains("tidemark/" + room + "/"));
  }

  @Override
  public @Nullable Void visitMethod(MethodTree method, @Nullable Void nothing) {
    if (method.getBody() != null) {
      long first = line(positions.getStartPosition(unit, method));
      long lines = line(positions.getEndPosition(unit, method)) - first + 1;
      scan.methods().add(new SourceScan.Measure(name + ":" + first, lines));
      if (lines > SourceScan.LONGEST_METHOD) {
        fault(method, method.getName() + " has " + lines + " lines; a method has at most 60");
      }
    }
    return super.visitMethod(method, null);
  }

  @Override
  public @Nullable Void visitCatch(CatchTree clause, @Nullable Void nothing) {
    Tree type = clause.getParameter().getType();
    List<? extends Tree> caught =
        type instanceof UnionTypeTree union ? union.getTypeAlternatives() : List.of(type);
    for (Tree each : caught) {
      String simple = each.toString().substring(each.toString().lastIndexOf('.') + 1);
      if (CATCH_ALL.contains(simple)) {
        fault(clause, "catches " + simple + "; a catch-all hides an error that must be seen");
      }
    }
    return super.visitCatch(clause, null);
  }

  @Override
  public @Nullable Void visitPrimitiveType(PrimitiveTypeTree type, @Nullable Void nothing) {
    if (quiet && BINARY.contains(type.getPrimitiveTypeKind())) {
      fault(type, "a " + type + " where limits are compared");
    }
    return super.visitPrimitiveType(type, null);
  }

  private void fault(Tree tree, String what) {
    scan.faults().add(name + ":" + line(positions.getStartPosition(unit, tree)) + ": " + what);
  }

  private long line(long position) {
    return unit.getLineMap().getLineNumber(position);
  }
}

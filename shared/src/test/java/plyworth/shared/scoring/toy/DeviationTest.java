package plyworth.shared.scoring.toy;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.opentest4j.TestAbortedException;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

/** For each rule of the kit, a plugin that breaks it and no other. */
class DeviationTest {

  static List<Deviation> deviations() throws ReflectiveOperationException {
    return Stream.of(DeclarationDeviations.all(), AnswerDeviations.all(), LayerwiseDeviations.all())
        .flatMap(List::stream)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("deviations")
  void breaksOneRuleAndNoOther(Deviation deviation) throws ReflectiveOperationException {
    List<String> broken = new ArrayList<>();
    for (Method rule : rules()) {
      if (breaks(deviation.plugin(), rule)) {
        broken.add(rule.getName());
      }
    }
    assertThat(broken).containsExactly(deviation.rule());
  }

  @Test
  void everyRuleHasAPluginThatBreaksIt() throws ReflectiveOperationException {
    Set<String> covered =
        deviations().stream().map(Deviation::rule).collect(Collectors.toCollection(TreeSet::new));
    assertThat(covered)
        .isEqualTo(
            rules().stream().map(Method::getName).collect(Collectors.toCollection(TreeSet::new)));
  }

  private static List<Method> rules() {
    return Arrays.stream(PluginConformance.class.getDeclaredMethods())
        .filter(m -> m.isAnnotationPresent(Test.class))
        .toList();
  }

  private static boolean breaks(ScoringPlugin plugin, Method rule) throws IllegalAccessException {
    try {
      rule.invoke(new DeviationTrial(plugin));
      return false;
    } catch (InvocationTargetException e) {
      return !(e.getCause() instanceof TestAbortedException);
    }
  }
}

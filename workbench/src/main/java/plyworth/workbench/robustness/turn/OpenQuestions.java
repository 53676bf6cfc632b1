package plyworth.workbench.robustness.turn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * What is worth measuring: the figures of materials on which it hangs who leads. Each is moved
 * alone through its range, from low to high, all else typical, and the leader is set against its
 * rivals, the best of the next kinds. Ends are looked at, nothing between: value need not rise or
 * fall throughout.
 *
 * @param leader the structure that leads
 * @param rivals the best of the next kinds, best first
 * @param unknown figures that count and are not known at all, of the leader or a rival
 * @param questions figures by what they can do to the lead, the gravest first
 * @param complete whether all were tried; otherwise it was cancelled
 */
public record OpenQuestions(
    Structure leader,
    List<Structure> rivals,
    List<Unknown> unknown,
    List<Question> questions,
    boolean complete) {

  private static final int RIVALS = 3;

  /** Copies the lists. */
  public OpenQuestions {
    rivals = List.copyOf(rivals);
    unknown = List.copyOf(unknown);
    questions = List.copyOf(questions);
  }

  /** A figure that a criterion lacks. */
  public record Unknown(String material, String property) {}

  /**
   * A figure of a material that is known within a range.
   *
   * @param property the property it stands in
   * @param rival the rival against which it can do most
   * @param lead by how much the leader leads that rival while all is typical
   * @param least by how much it leads at the end of the range that is worse for it; negative when
   *     the rival overtakes, {@link Duel#OUT} below when the leader drops out
   */
  public record Question(
      String material, Property property, Structure rival, double lead, double least) {

    /** Whether its range alone lets the rival overtake. */
    public boolean turns() {
      return least < 0;
    }

    /** What of the lead it can take. */
    public double takes() {
      return lead - least;
    }

    /** Where the figure comes from. */
    public Sourced origin() {
      return property.points().get(0);
    }
  }

  /**
   * The questions of a ranking.
   *
   * @param ranked the ranking; at least one candidate is ranked
   * @param progress told how many figures are tried; may cancel
   */
  public static OpenQuestions of(Ranked ranked, Progress progress) {
    List<Structure> best =
        ranked.bestOfEach(1 + RIVALS, ranked.kinds()::of).stream()
            .map(candidate -> ranked.structure(candidate.path()))
            .toList();
    Structure leader = best.get(0);
    List<Structure> rivals = best.subList(1, best.size());
    Prepared prepared = ranked.scored().compiled().prepared();
    World world = World.of(ranked.study(), ranked.ranking().model());
    MaterialLibrary materials = ranked.study().materialsAtHand();
    Map<String, Question> gravest = new LinkedHashMap<>();
    AtomicInteger tried = new AtomicInteger();
    boolean complete = true;
    for (Structure rival : rivals) {
      Duel duel = new Duel(prepared.catalog(), leader, rival);
      double lead = duel.in(world).lead();
      List<Input> inputs = uncertain(Inputs.of(duel, world), materials);
      List<Question> asked =
          inputs.parallelStream()
              .filter(input -> !progress.cancelled())
              .map(
                  input -> {
                    Question question = question(duel, world, input, lead, materials);
                    progress.scored(tried.incrementAndGet(), (long) inputs.size() * rivals.size());
                    return question;
                  })
              .toList();
      complete &= asked.size() == inputs.size();
      for (Question question : asked) {
        String name = question.material() + "/" + question.property().id();
        gravest.merge(name, question, (one, other) -> one.least() <= other.least() ? one : other);
      }
    }
    return new OpenQuestions(
        leader, rivals, unknown(prepared, ranked, best), sorted(gravest), complete);
  }

  private static List<Question> sorted(Map<String, Question> gravest) {
    return gravest.values().stream()
        .filter(question -> question.takes() > 0)
        .sorted(
            Comparator.comparingDouble(Question::least)
                .thenComparing(Question::material)
                .thenComparing(question -> question.property().id()))
        .toList();
  }

  private static List<Input> uncertain(List<Input> inputs, MaterialLibrary materials) {
    List<Input> uncertain = new ArrayList<>();
    for (Input input : inputs) {
      boolean ranged = input.low() < input.high();
      if (ranged && materials.find(owner(input)).isPresent()) {
        uncertain.add(input);
      }
    }
    return uncertain;
  }

  private static String owner(Input input) {
    return input.name().substring(0, Math.max(0, input.name().indexOf('/')));
  }

  private static Question question(
      Duel duel, World world, Input input, double lead, MaterialLibrary materials) {
    double low = orLead(duel.in(input.in(world, input.low())).lead(), lead);
    double high = orLead(duel.in(input.in(world, input.high())).lead(), lead);
    String id = input.name().substring(input.name().indexOf('/') + 1);
    Property property = materials.require(owner(input)).property(id).orElseThrow();
    return new Question(owner(input), property, duel.other(), lead, Math.min(low, high));
  }

  /** Where neither is ranked, neither overtakes. */
  private static double orLead(double there, double lead) {
    return Double.isNaN(there) ? lead : there;
  }

  private static List<Unknown> unknown(
      Prepared prepared, Ranked ranked, List<Structure> structures) {
    ValueModel model = ranked.ranking().model();
    Set<Unknown> unknown = new LinkedHashSet<>();
    for (Structure structure : structures) {
      Map<String, Assessment> assessments = prepared.bound().score(structure);
      for (Weighed weighed : model.criteria()) {
        BoundCriterion criterion = weighed.criterion();
        if (weighed.counts()
            && prepared.bound().outcome(assessments, criterion)
                instanceof Outcome.DataMissing missing) {
          unknown.add(new Unknown(missing.subject(), missing.property()));
        }
      }
    }
    return List.copyOf(unknown);
  }
}

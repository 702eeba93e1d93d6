using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Testing.Laws;

/// <summary>Finds where in a plan a law applies: every choice of parts and of steps as they stand in it under which its conditions surely hold.</summary>
internal sealed class LawBindings(PlanCourse course, CompiledRule law)
{
    private readonly object[] _items = new object[law.Variables.Count];
    private readonly int[] _places = new int[law.Variables.Count];

    /// <summary>All of them.</summary>
    public IEnumerable<LawBinding> All() => From(0);

    private IEnumerable<LawBinding> From(int slot)
    {
        if (slot == law.Variables.Count)
        {
            var binding = new LawBinding(new Binding([.. _items]), [.. _places]);
            if (Holds(binding)) yield return binding;
            yield break;
        }

        foreach (var (item, place) in Candidates(law.Variables[slot]))
        {
            (_items[slot], _places[slot]) = (item, place);
            if (!law.Patterns.Where(pattern => Math.Max(pattern.First, pattern.Second) == slot).All(Matches)) continue;
            foreach (var binding in From(slot + 1)) yield return binding;
        }
    }

    private IEnumerable<(object Item, int Place)> Candidates(Variable variable) => variable.Sort == Sort.Step
        ? course.Plan.Steps.Select((step, index) => ((object)step.Step, index))
        : course.Plan.Situation.Parts.Where(part => (variable.Kind is null || part.Kind.IsA(variable.Kind)) && course.Plan.Beliefs.Exists(part) == Truth.Yes).Select(part => ((object)part, -1));

    private bool Matches(Pattern pattern)
    {
        var (sort, name) = (pattern.Predicate.Sort, pattern.Predicate.Name);
        if (sort == PredicateSort.Part) return ((Part)_items[pattern.First]).Kind.Lineage().Any(kind => kind.Name == name);
        if (sort == PredicateSort.Job) return course.Plan.Situation.Jobs.Any(job => job.Job.Name == name && (pattern.First < 0 || job.On == _items[pattern.First]));
        if (sort == PredicateSort.Related)
            return course.Plan.Situation.Vocabulary.Relations[name] is var relation
                && course.Plan.Beliefs.Related(relation, (Part)_items[pattern.First], (Part)_items[pattern.Second]) == Truth.Yes;
        var (step, index) = ((Step)_items[pattern.First], _places[pattern.First]);
        var part = pattern.Second < 0 ? null : (Part)_items[pattern.Second];
        return sort switch
        {
            PredicateSort.Does => step.Operation.Name == name,
            PredicateSort.Place => step.Operation.Place == name,
            PredicateSort.Energy => step.Operation.Energies.Contains(name),
            PredicateSort.Phase => step.Operation.Phase.ToString().Equals(name, StringComparison.OrdinalIgnoreCase),
            PredicateSort.On => step.Part == part,
            PredicateSort.Touches => step.Part == part || step.Operation.Touches.Any(part!.Kind.IsA),
            PredicateSort.Moves => (step.Operation.MovesIt && step.Part == part) || step.Operation.Moves.Any(part!.Kind.IsA),
            PredicateSort.Leaves => Change(index, part!, name) is var (before, after) && before == pattern.Predicate.Detail && after != before,
            PredicateSort.Reaches => Change(index, part!, name)?.After == pattern.Predicate.Detail,
            _ => true,
        };
    }

    // What the step does there and then, not all that its operation may do.
    private (string Before, string After)? Change(int index, Part part, string aspect)
    {
        foreach (var (_, after) in course.Plan.Steps[index].Changes)
            if (after.Part == part && after.Aspect.Name == aspect)
                return (after.Aspect.States[course.State(index, part, after.Aspect)], after.Aspect.States[course.State(index + 1, part, after.Aspect)]);
        return null;
    }

    private bool Holds(LawBinding binding) =>
        law.Tests.All(test => test.Evaluate(course.Plan.Beliefs, binding.Items) == Truth.Yes)
        && law.AtStart.All(state => state.States.Has(course.Plan.Situation.StateNow(binding.Part(state.Slot), state.Aspect)))
        && binding.Places.Where(place => place >= 0).All(place => law.Moments.All(state => state.States.Has(course.State(place, binding.Part(state.Slot), state.Aspect))));
}

using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Laws;

/// <summary>The states that a plan passes through, played back step by step.</summary>
internal sealed class PlanCourse
{
    private readonly List<Dictionary<StateVariable, int>> _before = [];

    public PlanCourse(Plan plan)
    {
        Plan = plan;
        var now = plan.Situation.States.ToDictionary();
        foreach (var step in plan.Steps)
        {
            _before.Add(new(now));
            foreach (var (_, after) in step.Changes) now[after.Variable] = after.States.States().First();
        }

        _before.Add(now);
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>The index of the moment behind the last step.</summary>
    public int End => _before.Count - 1;

    /// <summary>The state of an aspect before a step, by the step's index.</summary>
    public int State(int index, Part part, Aspect aspect) => _before[index].TryGetValue(new StateVariable(part, aspect), out var state) ? state : aspect.Normal;

    /// <summary>What some step changes.</summary>
    public IEnumerable<StateVariable> Touched => Plan.Steps.SelectMany(step => step.Changes).Select(change => change.After.Variable).Distinct();

    /// <summary>A step in words.</summary>
    public string Say(int index) => index == End ? "at the end" : $"at step {Plan.Steps[index].Number}, {Plan.Steps[index].Id}";
}

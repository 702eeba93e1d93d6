using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules;

/// <summary>What was said in a session since the sheet was read, in order, so that any of it can be taken back.</summary>
internal sealed class SessionStatements
{
    private readonly Situation _sheet;
    private readonly List<(FactKey? Fact, Func<Situation, Situation> Apply)> _said = [];

    /// <summary>Starts with what the sheet says.</summary>
    public SessionStatements(Situation sheet)
    {
        _sheet = sheet;
        Now = sheet;
    }

    private SessionStatements(SessionStatements other)
    {
        _sheet = other._sheet;
        _said = [.. other._said];
        Now = other.Now;
    }

    /// <summary>The sheet with everything said since.</summary>
    public Situation Now { get; private set; }

    /// <summary>The same so far, to be gone on from apart.</summary>
    public SessionStatements Fork() => new(this);

    /// <summary>Says something in words; a mistake leaves everything as it was.</summary>
    public void Say(string statement, DiagnosticBag diagnostics)
    {
        // What a technician says at the vehicle was seen there.
        if (StatementReader.Apply(statement, Now, Source.Measured, diagnostics) is not { } next || diagnostics.HasErrors) return;
        var fact = next.Observations.Except(Now.Observations).Concat(Now.Observations.Except(next.Observations)).Select(observation => (FactKey?)observation.Fact)
            .Concat(next.Doubts.Except(Now.Doubts).Concat(Now.Doubts.Except(next.Doubts)).Select(doubt => (FactKey?)doubt.Fact))
            .FirstOrDefault();
        _said.Add((fact, situation => StatementReader.Apply(statement, situation, Source.Measured, new DiagnosticBag()) ?? situation));
        Now = next;
    }

    /// <summary>Says the value of a fact.</summary>
    public void Say(Observation observation, DiagnosticBag diagnostics)
    {
        var doubt = Plausibility.Of(observation, observation.Value.Quantity.ToString(UnitSystem.Us), diagnostics);
        Add(observation.Fact, situation => situation with
        {
            Observations =
            [
                .. situation.Observations.Where(old => old.Fact != observation.Fact || old.Source != observation.Source),
                .. doubt is null ? [observation] : Array.Empty<Observation>(),
            ],
            Doubts =
            [
                .. situation.Doubts.Where(old => old.Fact != observation.Fact),
                .. doubt is null ? Array.Empty<Doubt>() : [doubt],
            ],
        });
    }

    /// <summary>An aspect is now in a state: measured readings that rest on it are old.</summary>
    public void Leave(GroundState after) => Add(null, situation =>
    {
        var path = after.Aspect.ToString();
        return situation with
        {
            States = new Dictionary<StateVariable, int>(situation.States) { [after.Variable] = after.States.States().First() },
            Observations = [.. situation.Observations.Where(reading => reading.Source != Source.Measured || !reading.Fact.Fact.TakenIn.Contains(path))],
        };
    });

    /// <summary>A step was done.</summary>
    public void Finish(Step step) => Add(null, situation => situation with { Done = [.. situation.Done, new DoneWork(step.Operation, step.Part)] });

    /// <summary>A way is fixed; another fixed for the same choice is not any more.</summary>
    public void Fix(FixedWay way) => Add(null, situation => situation with { Ways = [.. situation.Ways.Where(other => other.Choice != way.Choice), way] });

    /// <summary>No way is fixed any more.</summary>
    public void LeaveWays() => Add(null, situation => situation with { Ways = [] });

    /// <summary>Takes back what was said of a fact.</summary>
    public void TakeBack(FactKey fact)
    {
        if (_said.RemoveAll(said => said.Fact == fact) > 0) Now = _said.Aggregate(_sheet, (situation, said) => said.Apply(situation));
    }

    private void Add(FactKey? fact, Func<Situation, Situation> apply)
    {
        _said.Add((fact, apply));
        Now = apply(Now);
    }
}

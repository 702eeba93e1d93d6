using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>Finds the conclusions that a plan waits for: what is held begins at a record whose premises stand firmer than it does.</summary>
internal static class HoldFinder
{
    /// <summary>The held effects that would bring work, states or ways, and the stops that wait to be known.</summary>
    public static IReadOnlyList<RecordEffect> Roots(BeliefState beliefs)
    {
        var roots = new List<RecordEffect>();
        foreach (var record in beliefs.Network.Records)
            for (var i = 0; i < record.Effects.Count; i++)
            {
                var effect = record.Effects[i];
                if (effect.IfUnknown != IfUnknown.Hold || beliefs.Available(record, i) != Assurance.Held) continue;
                if (effect.Conclusion is not (Conclusion.Do or Conclusion.Need or Conclusion.OneOf or Conclusion.Waypoints or null)) continue;
                if (record.Premises.All(premise => beliefs.Available(premise) > Assurance.Held)) roots.Add(new RecordEffect(record, i));
            }
        roots.AddRange(Stops.Waiting(beliefs));
        return [.. roots.OrderBy(root => root.Record.Name, StringComparer.Ordinal).ThenBy(root => root.Index)];
    }

    /// <summary>What a held effect would bring.</summary>
    public static Wording What(BeliefState beliefs, RecordEffect effect) => effect.Effect.Atom switch
    {
        Atom.Occurs occurs => Words.Instruction(beliefs, occurs.Step),
        Atom.Wanted wanted => new Wording(Words.State(new GroundState(wanted.Part, wanted.Aspect, wanted.States))),
        Atom.Open open => new Wording(Words.Choice(open.Choice)),
        _ when effect.Effect.Conclusion is Conclusion.Stop stop => new Wording(stop.Text, beliefs, effect.Record.Binding),
        _ => new Wording(effect.Record.Rule?.Title ?? ""),
    };
}

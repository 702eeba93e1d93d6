using ProcedureRules.Beliefs;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Choosing;

/// <summary>The stops that stand under some beliefs, where they are about steps that have a purpose.</summary>
internal static class Stops
{
    /// <summary>What stops the job, though it may be only possible.</summary>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="check">A step that finds something out and is to be done, or null.</param>
    public static IEnumerable<RecordEffect> Binding(BeliefState beliefs, Step? check = null) => Standing(beliefs, check).Where(source => !IsWaiting(beliefs, source));

    /// <summary>What may stop the job and says itself that the plan goes on until that is known; or all that may, where it is planned tentatively.</summary>
    public static IEnumerable<RecordEffect> Waiting(BeliefState beliefs) => Standing(beliefs, null).Where(source => IsWaiting(beliefs, source));

    private static IEnumerable<RecordEffect> Standing(BeliefState beliefs, Step? check)
    {
        var purposes = check is null ? null : beliefs.PurposesWith(check);
        foreach (var source in beliefs.Network.RecordsWith<Conclusion.Stop>())
        {
            if (beliefs.Available(source.Record, source.Index) > Assurance.No && (purposes ?? beliefs.Purposes).Serve(source.Record)) yield return source;
        }
    }

    private static bool IsWaiting(BeliefState beliefs, RecordEffect source) => (source.Effect.IfUnknown, beliefs.Available(source.Record, source.Index)) switch
    {
        (not IfUnknown.Do, < Assurance.Sure) when beliefs.IsTentative => true,
        (IfUnknown.Hold, Assurance.Held) => true,
        _ => false,
    };
}

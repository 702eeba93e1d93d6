using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>What holds of kinds of conclusion as such.</summary>
internal static class ConclusionForms
{
    /// <summary>What the plan does by default where a conclusion is possible but not sure.</summary>
    public static IfUnknown Default(string keyword) => keyword switch
    {
        "need" or "one_of" or "stop" or "forbid" => IfUnknown.BehindCheck,
        "end" or "do" or "for" or "against" or "exclude" => IfUnknown.Hold,
        _ => IfUnknown.Do,
    };

    /// <summary>Whether a conclusion is about a step, so that states at that step can guard it.</summary>
    public static bool HasMoment(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Need need => need.Step >= 0,
        Conclusion.Caution caution => caution.Step >= 0,
        Conclusion.Check check => check.Step >= 0,
        Conclusion.Tool tool => tool.Step >= 0,
        Conclusion.Supply supply => supply.Step >= 0,
        Conclusion.Detail detail => detail.Step >= 0,
        Conclusion.Slower slower => slower.Step >= 0,
        Conclusion.Order or Conclusion.Wait => true,
        _ => false,
    };

    /// <summary>Whether the keyword's conclusion can be about a step at all.</summary>
    public static bool CanHaveMoment(string keyword) => keyword
        is "need" or "order" or "danger" or "warning" or "caution" or "notice" or "check" or "tool" or "supply" or "detail" or "slower" or "wait";
}

using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A state condition on the moment is dropped, or turned into its opposite.</summary>
internal sealed class MomentEdit(int index, bool isNegated) : RuleEdit
{
    public override Record Apply(Record record)
    {
        if (record.Moments.Count <= index) return record;
        var moments = record.Moments.ToList();
        if (isNegated) moments[index] = moments[index] with { States = moments[index].States.Complement(moments[index].Aspect) };
        else moments.RemoveAt(index);
        return With(record, moments: moments);
    }
}

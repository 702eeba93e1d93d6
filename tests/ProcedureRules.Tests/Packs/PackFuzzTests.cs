using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>No text may bring the reader of packs down, and what it cannot read it complains about.</summary>
public sealed class PackFuzzTests
{
    [Property(MaxTest = 300)]
    public void Read_SpoiltPack_GivesAVocabularyOrSaysWhyNot(DoNotSize<int> any)
    {
        var (packs, bag) = GivenPacks.Read(Mutation.Spoil(GivenPacks.Base, any.Item), GivenPacks.Pack("kinds:\n  gear_starter: {is: starter}"));
        Assert.True(bag.Count > 0 || packs.Vocabulary.Kinds.ContainsKey("gear_starter"));
        Assert.All(packs.Vocabulary.Operations.Values, operation => Assert.All(operation.Changes, change => Assert.InRange(change.To, -1, change.Aspect.States.Count - 1)));
    }
}

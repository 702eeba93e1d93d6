using ProcedureRules.Facts;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>
/// The committed schemas are those that the shapes give. After a change of a shape, run these tests once with the environment
/// variable PROCEDURERULES_WRITE_SCHEMAS set to 1: they write the files and fail no more.
/// </summary>
public sealed class SchemaFilesTests
{
    public static TheoryData<string> Names => [.. SchemaFiles.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void CommittedSchema_ComparedWithShapes_IsTheSame(string name)
    {
        var path = RepositoryFolder.Of("rules", "schema", name);
        if (Environment.GetEnvironmentVariable("PROCEDURERULES_WRITE_SCHEMAS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, SchemaFiles.All[name]);
        }

        Assert.Equal(SchemaFiles.All[name], File.ReadAllText(path));
    }
}

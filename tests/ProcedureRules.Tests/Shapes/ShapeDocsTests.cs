using ProcedureRules.Shapes;
using Xunit;

namespace ProcedureRules.Tests.Shapes;

public class ShapeDocsTests
{
    [Fact]
    public void Table_SmallShape_HasARowForEachKey()
    {
        Assert.Equal(
            """
            | key | value | meaning |
            |---|---|---|
            | `pack` | text | The pack's name. **Required.** |
            | `place` | `under`, `bay`, `2` | Where. |
            | `draft` | `yes`, `no` | Whether it is a draft. Default: `no`. |
            | `parts` | mapping, each value: text | Parts by name. |
            | `then` | list of conclusions | What it concludes. |

            """.ReplaceLineEndings("\n"),
            ShapeDocs.Table(SmallShape.Root));
    }

    [Fact]
    public void Table_BarsAndNumbers_FitIntoCells()
    {
        var shape = new MapShape(
            "a step",
            Field.Required("hands", new IntegerShape(1, 4), "One | two."),
            Field.Optional("limit", new TextShape { Format = "quantity" }, "The limit."),
            Field.Optional("sub", new MapShape("a step"), "A step within."));

        Assert.Equal(
            """
            | key | value | meaning |
            |---|---|---|
            | `hands` | whole number, 1 to 4 | One \| two. **Required.** |
            | `limit` | quantity | The limit. |
            | `sub` | a step | A step within. |

            """.ReplaceLineEndings("\n"),
            ShapeDocs.Table(shape));
    }
}

using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Packing;
using UnitsNet;

namespace StudioKit.Planning.Tests.Packing;

/// <summary>RFC 4180, section 2: rows end in CR LF, fields with commas or quotes are quoted, a quote inside is doubled.</summary>
public sealed class PackTableTests
{
    [Fact]
    public void Names_with_commas_quotes_and_other_alphabets_come_through()
    {
        var pack = new PackPlan
        {
            Items =
            [
                new PackedItem { Name = "κουτί, \"μικρό\"", Count = 2, Mass = Mass.FromGrams(81.5), Origin = MassOrigin.Weighed, Stage = PackItemStage.Shooting, Bag = "рюкзак" },
            ],
            Bags = [],
            Total = Mass.FromGrams(81.5),
            Cells = [],
        };

        PackTable.Csv(pack).Split("\r\n")[1].Should().Be("рюкзак,shooting,,\"κουτί, \"\"μικρό\"\"\",2,81.5,weighed,,,,,no,no,yes");
    }

    [Fact]
    public void Every_row_has_as_many_fields_as_the_head_and_masses_add_up()
    {
        var pack = KitText.Demo("fen-edge.yaml").Pack;

        var rows = StudioKit.Planning.Tables.CsvText.Read(PackTable.Csv(pack));

        rows.Should().HaveCount(pack.Items.Count + 1).And.OnlyContain(row => row.Count == rows[0].Count);
        rows.Skip(1).Sum(row => double.Parse(row[5].Text, System.Globalization.CultureInfo.InvariantCulture))
            .Should().BeApproximately(pack.Items.Sum(item => item.Mass.Grams), 0.005 * pack.Items.Count, "each mass is rounded to a hundredth of a gram");
    }
}

using System.IO.Compression;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

public sealed class PrintedKitsTests
{
    private static readonly SheetsRequest All = new(Asked.Demo(), "fen-edge.yaml", "", Letter: false, Inches: false, Date: "2027-05-14");

    [Fact]
    public void Cards_are_offered_first()
    {
        var offers = new Asked().For(EngineQuestions.Offers, All);

        offers.Groups.Select(group => group.Name).Take(3).Should().Equal("cards-A6.pdf", "cards-3x5in.pdf", "handling-cards.pdf");
        offers.Groups.Single(group => group.Name == "tables").HasPages.Should().BeFalse();
    }

    [Fact]
    public void A_zip_of_a_group_holds_that_group_alone_dated_as_the_sheets_are()
    {
        var asked = new Asked();
        asked.For(EngineQuestions.MakeSheets, All with { Group = "pack-list.pdf" });
        asked.For(EngineQuestions.MakeSheets, All with { Group = "tables" });

        var zipped = asked.For(EngineQuestions.ZipSheets, All with { Group = "tables" }).Files.Should().ContainSingle().Subject;

        using var zip = new ZipArchive(new MemoryStream(asked.Take(zipped.Name)));
        zip.Entries.Select(entry => entry.FullName).Should().Equal("light-places.csv", "pack-list.csv", "pipe-cuts.csv", "sheet-cuts.csv", "shopping.csv");
        zip.Entries.Should().OnlyContain(entry => entry.LastWriteTime.Date == new DateTime(2027, 5, 14));
    }

    [Fact]
    public void What_was_made_of_another_kit_is_not_zipped_with_it()
    {
        var asked = new Asked();
        asked.For(EngineQuestions.MakeSheets, All with { Group = "pack-list.pdf" });
        var other = All with { Text = All.Text.Replace("Fen edge", "Fen rim", StringComparison.Ordinal) };
        asked.For(EngineQuestions.MakeSheets, other with { Group = "tables" });

        var zipped = asked.For(EngineQuestions.ZipSheets, other).Files[0];

        using var zip = new ZipArchive(new MemoryStream(asked.Take(zipped.Name)));
        zip.Entries.Should().NotContain(entry => entry.FullName == "pack-list.pdf");
    }

    [Fact]
    public void A_group_that_the_kit_has_not_is_refused_by_name()
    {
        var make = () => new Asked().For(EngineQuestions.MakeSheets, All with { Group = "menu.pdf" });

        make.Should().Throw<ArgumentException>().WithMessage("*menu.pdf*");
    }

    [Fact]
    public void A_kit_that_cannot_be_read_offers_nothing() =>
        new Asked().For(EngineQuestions.Offers, All with { Text = "kit: [" }).Groups.Should().BeEmpty();
}

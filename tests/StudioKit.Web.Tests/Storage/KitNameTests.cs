using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Storage;

public sealed class KitNameTests
{
    [Theory]
    [InlineData("heath", "heath.yaml")]
    [InlineData("notes.txt", "notes.txt.yaml")]
    [InlineData("fen 2.0", "fen 2.0.yaml")]
    [InlineData("fen.yaml", "fen.yaml")]
    [InlineData("Fen.YML", "Fen.YML")]
    public void A_kits_file_has_a_kits_ending(string given, string kept) => KitName.Of(given).Should().Be(kept);

    [Fact]
    public async Task A_renamed_kit_is_found_again_in_an_archive()
    {
        var device = new SharedDevice();
        var tab = await OpenTab.OnAsync(device);

        await tab.Keeper.RenameAsync(tab.Keeper.Id, "heath");

        device.Texts.Should().Equal(new Dictionary<string, string> { ["heath.yaml"] = "fen" });
    }
}

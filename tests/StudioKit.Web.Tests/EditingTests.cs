using Microsoft.Playwright;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests;

/// <summary>Forms and the text beside them, as somebody uses them.</summary>
public sealed class EditingTests(ServedPage served) : IClassFixture<ServedPage>
{
    private static readonly string Fen = Asked.Demo();

    [BrowserFact]
    public async Task A_value_changed_in_the_form_keeps_every_comment_and_undo_brings_every_byte_back()
    {
        await using var visit = await served.VisitAsync();
        var before = await GearAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Panel", Exact = false }).First.ClickAsync();

        var width = visit.Page.GetByLabel("Width", new() { Exact = true });
        await width.FillAsync("61 cm");
        await width.BlurAsync();
        var changed = await visit.PlannedAsync(before);

        (await TextAsync(visit)).Should().Be(Fen.Replace("width: 600 mm", "width: 61 cm", StringComparison.Ordinal)).And.NotBe(Fen);
        await visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Gear", Exact = true }).ClickAsync();
        await visit.Page.EvaluateAsync("document.activeElement.blur()");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await visit.PlannedAsync(changed);
        (await TextAsync(visit)).Should().Be(Fen);
        (await visit.PlannedAsync(changed)).Should().Be(before);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_lens_is_added_by_the_keyboard_alone()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        var before = await GearAsync(visit);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add a lens" }).FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'lenses[2].name'");
        await visit.Page.Keyboard.TypeAsync("sallow 90");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.TypeAsync("90 mm");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.PlannedAsync(before);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "sallow 90", Exact = false, Expanded = true }).WaitForAsync();
        (await TextAsync(visit)).Should().Contain("name: sallow 90").And.StartWith(Fen[..Fen.IndexOf("accessories:", StringComparison.Ordinal)].TrimEnd());
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task What_is_wrong_in_the_text_is_shown_at_its_line_and_at_its_field()
    {
        await using var visit = await served.VisitAsync();
        await GearAsync(visit);
        var text = await PlainFieldAsync(visit);
        var line = Fen[..Fen.IndexOf("width: 600 mm", StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;

        await text.FillAsync(Fen.Replace("width: 600 mm", "width: 600", StringComparison.Ordinal));
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show where" }).ClickAsync();

        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'panel.width'");
        (await visit.Page.Locator(".field.wrong .fault").TextContentAsync()).Should().Contain($"Line {line}");
        (await visit.Page.Locator(".numbers").TextContentAsync()).Should().Contain($"✕ {line}\n");
        await visit.Page.Locator(".field.wrong .fault button").ClickAsync();
        await visit.Page.WaitForFunctionAsync("line => { const t = document.getElementById('kit-text'); return t.value.slice(0, t.selectionStart).split('\\n').length === line; }", line);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_part_is_found_by_words_and_a_value_that_cannot_be_is_not_written()
    {
        await using var visit = await served.VisitAsync();
        var before = await GearAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Panel", Exact = false }).First.ClickAsync();

        await visit.Page.GetByLabel("Width", new() { Exact = true }).FillAsync("61 kg");
        await visit.Page.GetByText("Not written yet", new() { Exact = false }).WaitForAsync();
        await visit.Page.GetByLabel("Choose: Part from the library").ClickAsync();
        await visit.Page.GetByLabel("Search the library").FillAsync("acrylic 4");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "opal-acrylic-4", Exact = false }).ClickAsync();
        await visit.PlannedAsync(before);

        (await TextAsync(visit)).Should().Be(Fen.Replace("opal-acrylic-3", "opal-acrylic-4", StringComparison.Ordinal));
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_pinned_state_stands_beside_the_changed_one()
    {
        await using var visit = await served.VisitAsync();
        var before = await GearAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this state" }).ClickAsync();
        await visit.Page.GetByText("Both weigh the same.").WaitForAsync();
        var text = await PlainFieldAsync(visit);

        await text.FillAsync(Fen.Replace("{name: water, mass: 1 kg, count: 2", "{name: water, mass: 1 kg, count: 3", StringComparison.Ordinal));
        await visit.PlannedAsync(before);

        // One more bottle of 1 kg.
        await visit.Page.GetByText("The second is 1.00 kg heavier.").WaitForAsync();
        (await visit.Page.Locator(".whatif tr.differs th").AllTextContentsAsync()).Should().Contain(subject => subject.Contains("carried"));
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task The_text_is_completed_and_underlined_by_the_planners_own_reader()
    {
        await using var visit = await served.VisitAsync();
        var before = await GearAsync(visit);
        await TextAsync(visit);

        await visit.Page.Locator(".cm-content").FocusAsync();
        await visit.Page.Keyboard.PressAsync("Control+End");
        await visit.Page.Keyboard.TypeAsync("  kilt");
        await visit.Page.Locator(".cm-lintRange-error").First.WaitForAsync();
        for (var letter = 0; letter < 4; letter++)
        {
            await visit.Page.Keyboard.PressAsync("Backspace");
        }

        await visit.Page.Keyboard.TypeAsync("stud");
        await visit.Page.Locator(".cm-tooltip-autocomplete").GetByText("studios", new() { Exact = true }).ClickAsync();

        (await TextAsync(visit)).Should().StartWith(Fen + "  studios: ");
        (await visit.Page.Locator("style").CountAsync()).Should().Be(0);
        before.Should().NotBeEmpty();
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task What_is_more_than_a_kit_may_hold_is_not_put_into_the_plain_field_and_that_is_said()
    {
        await using var visit = await served.VisitAsync();
        await GearAsync(visit);
        var text = await PlainFieldAsync(visit);
        await visit.Page.Locator("#kit-text[data-is-followed]").FocusAsync();

        // As a paste does it: one input of many lines.
        await visit.Page.Keyboard.InsertTextAsync(string.Concat(Enumerable.Repeat("# a line of a text that is far too long for any kit\n", 25_000)));

        await visit.Page.GetByText("nothing was put in").WaitForAsync();
        (await text.InputValueAsync()).Should().Be(Fen);
        await visit.Page.Keyboard.InsertTextAsync("# a remark ");
        await Assertions.Expect(visit.Page.GetByText("nothing was put in")).ToHaveCountAsync(0);
        (await text.InputValueAsync()).Should().Contain("# a remark ").And.HaveLength(Fen.Length + "# a remark ".Length);
        visit.Complaints.Should().BeEmpty();
    }

    private static async Task<string> GearAsync(Visit visit)
    {
        var planned = await visit.PlannedAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Gear", Exact = true }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add a lens" }).WaitForAsync();
        return planned;
    }

    // Opens the text where it is not open; the editor draws only what is in sight, so it is asked for all.
    private static async Task<string> TextAsync(Visit visit)
    {
        if (await visit.Page.Locator(".textpane").CountAsync() == 0)
        {
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Text", Exact = true }).ClickAsync();
        }

        await visit.Page.Locator(".cm-content").WaitForAsync();
        return await visit.Page.EvaluateAsync<string>("async () => (await import(new URL('js/text-editor.js', document.baseURI).href)).text()");
    }

    private static async Task<ILocator> PlainFieldAsync(Visit visit)
    {
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Text", Exact = true }).ClickAsync();
        await visit.Page.GetByLabel("As a plain field").CheckAsync();
        return visit.Page.Locator("#kit-text");
    }
}

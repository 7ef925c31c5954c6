using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests.Json;

/// <summary>A demo kit, or a part of it, with one session for all changes that are made to it, so that each is planned after all those before it.</summary>
internal sealed class SessionBench
{
    private readonly Plan _plan;

    /// <param name="kit">Name of a demo kit.</param>
    /// <param name="without">A part of its text that is left out: from the first of these to the second.</param>
    public SessionBench(string kit, (string From, string To)? without = null)
    {
        var text = File.ReadAllText(Path.Combine(Checkout(), "kits", kit));
        Text = without is { } part ? text.Remove(text.IndexOf(part.From, StringComparison.Ordinal), text.IndexOf(part.To, StringComparison.Ordinal) - text.IndexOf(part.From, StringComparison.Ordinal)) : text;
        Before = PlanSessionTests.Read(Text);
        _plan = KitPlanner.Plan(Before);
        Unchanged = PlanSessionTests.Written(_plan);
    }

    public string Text { get; }

    public PlanSession Session { get; } = new();

    public KitReadResult Before { get; }

    public string Unchanged { get; }

    /// <summary>Holds what a session gives for a changed kit, and for the kit as it was after it, against plans made afresh.</summary>
    /// <remarks>What is advised for the kit as it was is not worked out again each time: it hangs on the plan that it is advised for.</remarks>
    public void Holds((string From, string To) change)
    {
        var (from, to) = change;
        var after = PlanSessionTests.Read(Text.Replace(from, to, StringComparison.Ordinal));

        Session.Plan(Before);
        var within = Session.Plan(after);
        var back = PlanSessionTests.Written(Session.Plan(Before) with { Advice = _plan.Advice });

        var written = PlanSessionTests.Written(within);
        written.Should().Be(PlanSessionTests.Afresh(after, within), "'{0}' became '{1}'", from, to);
        written.Should().NotBe(Unchanged, "'{0}' in place of '{1}' changes the plan", to, from);
        back.Should().Be(Unchanged);
    }

    private static string Checkout()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run inside a checkout.");
        }

        return folder.FullName;
    }
}

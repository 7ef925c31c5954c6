using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>Changes that mend checks of the kit on the desk: looked for step by step, offered for the text that they were found for, and made with one press.</summary>
/// <param name="engine">Who looks for them.</param>
/// <param name="desk">The kit in hand.</param>
public sealed class MendDesk(IEngine engine, Desk desk)
{
    private readonly Dictionary<string, (string Text, MendAnswer? Answer, string Fault)> _searches = new(StringComparer.Ordinal);

    /// <summary>An offer was found or not, or one was made.</summary>
    public event EventHandler? Changed;

    /// <summary>What was made last; none where nothing was, or the kit changed since.</summary>
    public MadeMend? Made { get; private set; }

    /// <summary>How the search for a check stands; none where nobody looked since the text changed.</summary>
    /// <param name="check">The check.</param>
    public MendSearch? Of(string check) => _searches.TryGetValue(check, out var search) && search.Text == desk.Kit?.Text ? new MendSearch(search.Answer, search.Fault) : null;

    /// <summary>Looks for a change that mends a check, until one is found, there is none, or the text is another.</summary>
    /// <param name="check">The check.</param>
    public async Task LookAsync(string check)
    {
        if (desk.Kit is not { } kit || Of(check) is not null)
        {
            return;
        }

        var (text, fileName) = (kit.Text, kit.FileName);
        Say(check, text, null, "");
        try
        {
            for (var step = 0; Of(check) is { Answer: null }; step++)
            {
                if (await engine.AskAsync(EngineQuestions.Mend, new MendRequest(text, fileName, check, step)) is { IsDone: true } answer)
                {
                    Say(check, text, answer, "");
                }
            }
        }
        catch (EngineFaultException fault)
        {
            Say(check, text, null, fault.Message);
        }
    }

    /// <summary>Makes the change that is offered for a check, and says what came of it.</summary>
    /// <param name="check">The check, by its line.</param>
    /// <param name="name">What to call it.</param>
    public async Task MakeAsync(string check, string name)
    {
        if (Of(check)?.Answer is not { Label.Length: > 0 } offer)
        {
            return;
        }

        var failed = Failing(desk.Plan);
        await desk.ChangeAsync(kit => kit.Change(offer.Text));
        if (desk.Kit?.Text == offer.Text && desk.Plan is { } plan && desk.EngineFault.Length == 0)
        {
            var now = Failing(plan);
            Made = new MadeMend(offer.Text, offer.Label, name, !now.ContainsKey(check), [.. now.Where(failing => !failed.ContainsKey(failing.Key)).Select(failing => failing.Value)]);
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    private static Dictionary<string, string> Failing(PlanAnswer? plan) =>
        (plan?.Checks ?? []).Where(check => !check.Passed).DistinctBy(check => check.Id).ToDictionary(check => check.Id, check => check.Name, StringComparer.Ordinal);

    private void Say(string check, string text, MendAnswer? answer, string fault)
    {
        _searches[check] = (text, answer, fault);
        Changed?.Invoke(this, EventArgs.Empty);
    }
}

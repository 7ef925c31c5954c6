using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Handling;
using StudioKit.Planning.Session;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Handling cards and session of a plan as JSON.</summary>
internal static class SessionJson
{
    public static void Write(JsonReport json, Plan plan)
    {
        json.List("handling", plan.Handling, card => WriteCard(json, card));
        if (plan.Session is { } session)
        {
            json.Section("session", () => WriteSession(json, session));
        }

        if (plan.Day is { } day)
        {
            json.Section("day", () => DayJson.Write(json, day));
        }
    }

    private static void WriteCard(JsonReport json, HandlingCard card) => json
        .Text("group", MemberText.Of(card.Group))
        .Text("name", card.Name)
        .Text("examples", card.Examples)
        .Number("holdLimitS", card.HoldLimit?.Seconds)
        .List("subjects", card.Subjects, subject => json.Text("name", subject.Name).Number("holdLimitS", subject.HoldLimit?.Seconds))
        .List("lines", card.Lines, line => json
            .Text("topic", MemberText.Of(line.Topic))
            .Text("text", line.Text)
            .Text("source", line.Source)
            .Flag("published", line.Published)
            .Text("agent", line.Disinfectant is { } used ? MemberText.Of(used.Agent) : null)
            .Number("strength", line.Disinfectant?.Strength)
            .Number("contactTimeS", line.Disinfectant?.ContactTime.Seconds));

    private static void WriteSession(JsonReport json, SessionPlan session) => json
        .Text("rule", SessionPlan.Rule)
        .Count("rounds", session.Rounds)
        .Number("timeS", session.Time.Seconds)
        .Count("frames", session.Frames)
        .Count("changes", session.Changes)
        .Flag("provenFewest", session.ProvenFewest)
        .List("blocks", session.Blocks, block => WriteBlock(json, block))
        .List("subjects", session.Subjects, subject => json
            .Text("name", subject.Name)
            .Text("group", MemberText.Of(subject.Group))
            .Number("holdTimeS", subject.HoldTime.Seconds)
            .Number("holdLimitS", subject.HoldLimit?.Seconds)
            .Flag("withinLimit", subject.WithinLimit))
        .List("flashes", session.Flashes, flash => json
            .Text("flash", flash.Flash)
            .Count("flashes", flash.Flashes)
            .Number("fullPowerFlashes", flash.FullPowerFlashes)
            .Count("setsNeeded", flash.SetsNeeded)
            .Count("setsCarried", flash.SetsCarried)
            .Count("cellsPerSet", flash.CellsPerSet)
            .Count("flashesCarried", flash.FlashesCarried)
            .Flag("enough", flash.Enough))
        .Texts("notes", session.Notes);

    private static void WriteBlock(JsonReport json, SessionBlock block)
    {
        json.Number("plannedFromEv100", block.Planned.Darkest.AtIso100)
            .Number("plannedToEv100", block.Planned.Brightest.AtIso100)
            .Number("darkestEv100", block.Light.Darkest.AtIso100)
            .Number("brightestEv100", block.Light.Brightest.AtIso100)
            .Text("clock", block.Clock is { } hours ? SessionText.Hours(hours) : null)
            .List("setUps", block.SetUps, setUp => WriteWindow(json, setUp))
            .Texts("only", block.Only)
            .Count("rounds", block.Rounds)
            .Number("timeS", block.Time.Seconds)
            .Count("frames", block.Frames)
            .Count("flashes", block.Flashes)
            .Section("firstRound", () => WriteRound(json, block.First));
        if (block.Hours is { } times)
        {
            json.Section("hours", () => DayJson.Write(json, times));
        }

        if (block.Following is { } following)
        {
            json.Section("followingRound", () => WriteRound(json, following));
        }
    }

    private static void WriteWindow(JsonReport json, SetUpWindow setUp) => json
        .Text("setUp", setUp.SetUp)
        .Number("plannedEv100", setUp.Planned.AtIso100)
        .Number("darkestEv100", setUp.Light.Darkest.AtIso100)
        .Number("brightestEv100", setUp.Light.Brightest.AtIso100)
        .Flag("given", setUp.IsGiven)
        .Number("worksDownToEv100", setUp.Works.Darkest.AtIso100)
        .Number("worksUpToEv100", setUp.Works.Brightest.AtIso100)
        .Text("clock", setUp.Clock is { } hours ? SessionText.Hours(hours) : null);

    private static void WriteRound(JsonReport json, SessionRound round) => json
        .Number("timeS", round.Time.Seconds)
        .Count("frames", round.Frames)
        .Count("flashes", round.Flashes)
        .Count("changes", round.Changes)
        .List("steps", round.Steps, step => json
            .Text("kind", MemberText.Of(step.Kind))
            .Text("what", SessionStepText.Of(step))
            .Texts("tests", step.Tests.Select(test => MemberText.Of(test)))
            .Text("subject", step.Subject)
            .Text("setUp", step.SetUp)
            .Text("framing", step.Framing)
            .Text("cover", step.Cover?.Name)
            .Number("timeS", step.Time.Seconds)
            .Count("frames", step.Frames)
            .Count("stackFrames", step.StackFrames)
            .Count("flashes", step.Flashes)
            .Flag("held", step.Held));
}

using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Advice;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Cli;

/// <summary>Options that say which part of which plan a picture belongs to.</summary>
internal sealed class PlanOptions
{
    private readonly Option<string?> _kit = new("--kit") { Description = "The kit that the frames were taken with, e.g. kits/fen-edge.yaml; left out, no plan is made.", HelpName = "file" };
    private readonly Option<string> _setUp = new("--set-up") { Description = "Name of the set-up, e.g. white; left out, the white-background one where there is only one.", DefaultValueFactory = _ => "" };
    private readonly Option<string> _framing = new("--framing") { Description = "Name of the framing, as on the card, e.g. \"reed 55 at 1:2\"; left out, the only one.", DefaultValueFactory = _ => "" };
    private readonly Option<Angle> _pitch = QuantityOption.Optional("--pitch", "Camera pitch, e.g. 60°, where the set-up has several; left out, its only one.", QuantityText.TryAngle, Angle.Zero);

    /// <summary>Adds the options, without that for the kit where the command takes it otherwise.</summary>
    public void AddTo(Command command, bool withKit = true)
    {
        if (withKit)
        {
            command.Options.Add(_kit);
        }

        command.Options.Add(_setUp);
        command.Options.Add(_framing);
        command.Options.Add(_pitch);
    }

    /// <summary>The kit file; none where none is named.</summary>
    public string? KitPath(ParseResult parsed) => parsed.GetValue(_kit);

    /// <summary>Reads and plans the kit, where one is named.</summary>
    /// <returns>Whether all is well; nothing is planned where no kit is named.</returns>
    public bool TryRead(ParseResult parsed, CommandHost host, out TestFramePlan? plan)
    {
        plan = null;
        if (parsed.GetValue(_kit) is not { } path)
        {
            return true;
        }

        var read = KitInput.Read(path, host);
        plan = read.HasErrors ? null : Of(parsed, KitPlanner.Plan(read));
        return !read.HasErrors;
    }

    /// <summary>The plan with what the options pick out of it.</summary>
    public TestFramePlan Of(ParseResult parsed, Plan plan) => new(
        plan, new ExpectedLight(plan), parsed.GetRequiredValue(_setUp), parsed.GetRequiredValue(_framing),
        parsed.GetValue(_pitch) is var pitch && pitch > Angle.Zero ? pitch : null);
}

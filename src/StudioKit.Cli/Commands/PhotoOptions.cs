using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field;
using StudioKit.Field.Advice;
using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>What <c>studiokit photo</c> can be told, and what follows from it.</summary>
internal sealed class PhotoOptions(CommandHost host)
{
    public Argument<string[]> Frames { get; } = new("frames") { Description = "Picture files: JPEG, PNG or TIFF, e.g. panel.jpg.", Arity = ArgumentArity.OneOrMore };

    public Option<bool> Bare { get; } = new("--bare") { Description = "The frames show the panel alone, no subject." };

    public Option<string[]> Ladder { get; } = new("--ladder") { Description = "Powers of the frames in turn, e.g. 1/32,1/16,1/8, or one each time it is given, which makes them a power ladder; 'names' reads the powers from file names like panel-1-16.jpg, or from the picture's description. Each frame stands for itself where left out." };

    public Option<bool> LearnCurve { get; } = new("--learn-curve") { Description = "With --ladder and --kit: keep the camera's tone curve in the correction file beside the kit, for later frames." };

    public Option<FlashPower> Power { get; } = QuantityOption.Optional("--power", "Power of the lower flash, e.g. 1/8; left out, the plan's or none.", QuantityText.TryPower, default(FlashPower));

    public Option<FlashPower> LowestPower { get; } = QuantityOption.Optional("--lowest-power", "Its lowest power, e.g. 1/64.", QuantityText.TryPower, new FlashPower(1.0 / 128));

    public Option<PowerStep> PowerStep { get; } = QuantityOption.Optional("--power-step", "Step of its power dial: third, half or whole, e.g. half.", TryPowerStep, default(PowerStep));

    public Option<Length> Distance { get; } = QuantityOption.Optional("--distance", "Lower flash to panel, e.g. \"45 cm\"; left out, the plan's or none.", QuantityText.TryLength, Length.Zero);

    public Option<Length> Nearest { get; } = QuantityOption.Optional("--nearest", "How near the flash can stand, e.g. \"20 cm\".", QuantityText.TryLength, Length.FromCentimeters(10));

    public Option<Stops?> Target { get; } = QuantityOption.Optional<Stops?>("--target", "Margin over clipping to aim for, e.g. 1/2; left out, the set-up's, or 1/3 stop.", TryStops, null);

    public PlanOptions Plan { get; } = new();

    public Option<string?> Out { get; } = new("--out") { Description = "Folder for pictures, e.g. out: each frame small with what is not white hatched, and a ladder's map; none are drawn where left out." };

    public Option<bool> Force { get; } = ForceOption.Create();

    public Option<bool> Json { get; } = JsonOption.Create();

    public void AddTo(Command command)
    {
        command.Arguments.Add(Frames);
        foreach (var option in new Option[] { Bare, Ladder, LearnCurve, Power, LowestPower, PowerStep, Distance, Nearest, Target, Out, Force, Json })
        {
            command.Options.Add(option);
        }

        Plan.AddTo(command);
    }

    /// <summary>Margin to aim for [stops].</summary>
    public double TargetOf(ParseResult parsed, SetUpSpec? setUp) =>
        Math.Max(0, (parsed.GetValue(Target) ?? setUp?.TargetWhiteMargin ?? new Stops(1.0 / 3)).Value);

    /// <summary>Power and distance as typed.</summary>
    public (FlashPower? Power, Length? Distance) Shot(ParseResult parsed) => (
        parsed.GetValue(Power) is { Fraction: > 0 } power ? ThirdStopSeries.FromMark(power) : null,
        parsed.GetValue(Distance) is var distance && distance > Length.Zero ? distance : null);

    /// <summary>The lower flash where no kit tells of it.</summary>
    public BeneathFlash? Beneath(ParseResult parsed) => Shot(parsed) is ({ } power, { } distance)
        ? Beneath(parsed, power, distance, parsed.GetValue(Nearest))
        : null;

    /// <summary>The lower flash where nothing tells how far away it stands, so that it cannot be moved.</summary>
    public BeneathFlash BeneathUnmoved(ParseResult parsed, FlashPower power) =>
        Beneath(parsed, power, Length.FromMeters(1), Length.FromMeters(1000));

    /// <summary>Writes pictures where a folder is named for them; otherwise they are not even drawn.</summary>
    public void WriteFiles(ParseResult parsed, IEnumerable<(string Name, byte[] Content)> files)
    {
        if (parsed.GetValue(Out) is { } folder)
        {
            var targets = OutputFiles.In(folder, files.Select(file => (file.Name, (ReadOnlyMemory<byte>)file.Content)));
            foreach (var path in OutputFiles.Write(host, parsed.GetValue(Force), parsed.GetRequiredValue(Frames), targets))
            {
                host.Error.WriteLine($"wrote {path}");
            }
        }
    }

    /// <summary>Tone curve that is kept for the kit's camera; none where no kit is named or none was learnt.</summary>
    public ToneCurve? KeptCurve(ParseResult parsed, TestFramePlan? plan) =>
        plan is null || Plan.KitPath(parsed) is not { } path ? null : CorrectionFile.Of(path, plan.Plan.Kit.Name)?.ToneCurve;

    private BeneathFlash Beneath(ParseResult parsed, FlashPower power, Length distance, Length nearest) =>
        new(power, ThirdStopSeries.FromMark(parsed.GetValue(LowestPower)), distance, nearest) { PowerStep = parsed.GetValue(PowerStep) };

    private static bool TryPowerStep(string text, out PowerStep value, out string problem)
    {
        PowerStep? named = Enum.GetValues<PowerStep>().Where(step => MemberText.Of(step) == text).Cast<PowerStep?>().FirstOrDefault();
        value = named ?? default;
        problem = named is null ? $"'{text}' is not a power step: write third, half or whole" : "";
        return named is not null;
    }

    private static bool TryStops(string text, out Stops? value, out string problem)
    {
        var read = QuantityText.TryStops(text, out var stops, out problem);
        value = stops;
        return read;
    }
}

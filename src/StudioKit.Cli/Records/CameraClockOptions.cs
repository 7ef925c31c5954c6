using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;
using StudioKit.FieldFiles.Pictures;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Records;

/// <summary>How far a camera's clock is off: given, or learnt from a picture whose time is known.</summary>
internal sealed class CameraClockOptions(CommandHost host)
{
    private readonly Option<Duration> _ahead = QuantityOption.Optional("--camera-ahead", "How far the camera's clock is ahead, e.g. \"200 s\" or \"1 h\"; it is right where left out.", QuantityText.TryDuration, Duration.Zero);
    private readonly Option<Duration> _behind = QuantityOption.Optional("--camera-behind", "How far it is behind, e.g. \"40 s\"; it is right where left out.", QuantityText.TryDuration, Duration.Zero);

    private readonly Option<string?> _pair = new("--camera-clock")
    {
        Description = "Learn it from a picture and its true time, e.g. watch.jpg=2026-05-09T14:02:30; it is right where left out.",
        HelpName = "picture=time",
    };

    public void AddTo(Command command)
    {
        command.Options.Add(_ahead);
        command.Options.Add(_behind);
        command.Options.Add(_pair);
    }

    /// <summary>The clock, none inside where nothing is given; none at all where what is given is wrong, which is then printed.</summary>
    public Optional? Read(ParseResult parsed)
    {
        Option[] given = [.. new Option[] { _ahead, _behind, _pair }.Where(option => parsed.GetResult(option) is { Implicit: false })];
        if (given.Length > 1)
        {
            host.Error.WriteLine("studiokit: give one of --camera-ahead, --camera-behind and --camera-clock.");
            return null;
        }

        return given switch
        {
            [] => new Optional(null),
            [var only] when only == _pair => Learnt(parsed.GetValue(_pair)!),
            _ => new Optional(new CameraClock(TimeSpan.FromSeconds((parsed.GetValue(_ahead) - parsed.GetValue(_behind)).Seconds))),
        };
    }

    private Optional? Learnt(string pair)
    {
        var split = pair.LastIndexOf('=');
        if (split < 1 || !FieldDate.TryRead(pair[(split + 1)..], local => host.Clock.LocalTimeZone.GetUtcOffset(local), out var date) || date.Moment is not { } truth)
        {
            host.Error.WriteLine($"studiokit: --camera-clock: '{pair}' is no picture with its time; write watch.jpg=2026-05-09T14:02:30.");
            return null;
        }

        var learnt = FramePicture.With(pair[..split], picture => CameraClock.Learn(picture.Settings, truth));
        if (learnt.Value is not { } clock)
        {
            FieldFaults.Print(host, learnt.Diagnostics);
            return null;
        }

        host.Error.WriteLine(clock.Ahead == TimeSpan.Zero ? "The camera's clock is right." : FormattableString.Invariant($"The camera's clock is {clock.Ahead.Duration().TotalSeconds:0} s {(clock.Ahead > TimeSpan.Zero ? "ahead" : "behind")}."));
        return new Optional(clock);
    }

    /// <summary>A clock that may not be known.</summary>
    internal sealed record Optional(CameraClock? Value);
}

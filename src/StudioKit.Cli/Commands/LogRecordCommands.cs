using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Pictures;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>The parts of <c>studiokit log</c> that put records in. Each prints the identifier of its record.</summary>
internal static class LogRecordCommands
{
    public static Command Session(CommandHost host, Option<string> file)
    {
        var start = Moment("--start", "When it began, e.g. 2026-05-09T14:00+01:00; now where left out.");
        var end = Moment("--end", "When it ended.");
        var (name, locality, habitat) = (Words("--name", "Name in your notes."), Words("--locality", "The place in words."), Words("--habitat", "Habitat in words."));
        var (country, protocol, remarks) = (Words("--country", "Country, two letters of ISO 3166-1."), Words("--protocol", "How subjects were found and portrayed."), Words("--remarks", "Anything else."));
        var (latitude, longitude) = (Number("--latitude", "Latitude on WGS 84, degrees."), Number("--longitude", "Longitude on WGS 84, degrees."));
        var (uncertainty, elevation) = (Number("--uncertainty-m", "Radius that holds the place, m."), Number("--elevation-m", "Height above sea level, m."));
        var recorders = new Option<string[]>("--recorded-by") { Description = "Who was there; once for each." };
        var command = new Command("session", "Opens a session: a place, a time, people.")
        {
            start, end, name, locality, habitat, country, protocol, remarks, latitude, longitude, uncertainty, elevation, recorders,
        };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log => LogCommand.Report(host, log.Save(new FieldSession
        {
            Start = parsed.GetValue(start) ?? host.Clock.GetLocalNow(),
            End = parsed.GetValue(end),
            Name = parsed.GetRequiredValue(name),
            Locality = parsed.GetRequiredValue(locality),
            Habitat = parsed.GetRequiredValue(habitat),
            CountryCode = parsed.GetRequiredValue(country),
            SamplingProtocol = parsed.GetRequiredValue(protocol),
            Remarks = parsed.GetRequiredValue(remarks),
            Latitude = parsed.GetValue(latitude),
            Longitude = parsed.GetValue(longitude),
            CoordinateUncertainty = parsed.GetValue(uncertainty),
            Elevation = parsed.GetValue(elevation),
            RecordedBy = parsed.GetValue(recorders) ?? [],
        }), session => session.Id)));
        return command;
    }

    public static Command Subject(CommandHost host, Option<string> file)
    {
        var session = new Argument<string>("session") { Description = "Identifier of the session." };
        var (name, qualifier, vernacular) = (Words("--name", "Scientific name, without doubt in it."), Words("--qualifier", "Doubt, such as cf."), Words("--vernacular", "Everyday name."));
        var (sex, stage, behaviour, remarks) = (Words("--sex", "Sex."), Words("--stage", "Life stage."), Words("--behaviour", "What it did."), Words("--remarks", "Anything else."));
        var identifiedBy = new Option<string[]>("--identified-by") { Description = "Who identified it; once for each." };
        var count = new Option<int?>("--count") { Description = "How many were seen." };
        var sensitivity = new Option<PlaceSensitivity>("--sensitivity") { Description = "How far its place is made coarser on export." };
        var command = new Command("subject", "Adds an animal or plant to a session.")
        {
            session, name, qualifier, vernacular, sex, stage, behaviour, remarks, identifiedBy, count, sensitivity,
        };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log => LogCommand.Report(host, log.Save(new FieldSubject
        {
            SessionId = parsed.GetRequiredValue(session),
            ScientificName = parsed.GetRequiredValue(name),
            IdentificationQualifier = parsed.GetRequiredValue(qualifier),
            VernacularName = parsed.GetRequiredValue(vernacular),
            Sex = parsed.GetRequiredValue(sex),
            LifeStage = parsed.GetRequiredValue(stage),
            Behaviour = parsed.GetRequiredValue(behaviour),
            Remarks = parsed.GetRequiredValue(remarks),
            IdentifiedBy = parsed.GetValue(identifiedBy) ?? [],
            IndividualCount = parsed.GetValue(count),
            Sensitivity = parsed.GetValue(sensitivity),
        }), subject => subject.Id)));
        return command;
    }

    public static Command Frame(CommandHost host, Option<string> file)
    {
        var subject = new Argument<string>("subject") { Description = "Identifier of the subject." };
        var photos = new Argument<string[]>("photos") { Description = "Picture files; settings are read from them.", Arity = ArgumentArity.OneOrMore };
        var pixel = QuantityOption.Optional("--pixel-size", "Size of a pixel at the subject, e.g. \"5.6 um\".", QuantityText.TryLength, Length.Zero);
        var (caption, creator, licence) = (Words("--caption", "Caption."), Words("--creator", "Photographer."), Words("--licence", "Licence, best as an address."));
        var command = new Command("frame", "Adds pictures of a subject.") { subject, photos, pixel, caption, creator, licence };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
        {
            var code = ExitCode.Done;
            foreach (var photo in parsed.GetRequiredValue(photos))
            {
                var opened = FramePicture.Open(photo);
                using var picture = opened.Value;
                var saved = picture is null ? FieldFaults.Print(host, opened.Diagnostics) : LogCommand.Report(host, log.Save(
                    FieldFrame.From(parsed.GetRequiredValue(subject), photo, picture.Settings, host.Clock.LocalTimeZone.GetUtcOffset(host.Clock.GetUtcNow())) with
                    {
                        MicrometresPerPixel = parsed.GetValue(pixel) > Length.Zero ? parsed.GetValue(pixel).Micrometers : null,
                        Caption = parsed.GetRequiredValue(caption),
                        Creator = parsed.GetRequiredValue(creator),
                        Licence = parsed.GetRequiredValue(licence),
                    }), frame => frame.Id);
                code = saved == ExitCode.Done ? code : saved;
            }

            return code;
        }));
        return command;
    }

    public static Command Measurement(CommandHost host, Option<string> file)
    {
        var subject = new Argument<string>("subject") { Description = "Identifier of the subject." };
        var (type, value) = (new Argument<string>("type") { Description = "What was measured, e.g. \"body length\"." }, new Argument<string>("value") { Description = "Its value." });
        var (unit, accuracy, method) = (Words("--unit", "SI unit, e.g. mm."), Words("--accuracy", "Accuracy in the same unit."), Words("--method", "How it was measured."));
        var command = new Command("measure", "Adds a measurement on a subject.") { subject, type, value, unit, accuracy, method };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log => LogCommand.Report(host, log.Save(new FieldMeasurement
        {
            SubjectId = parsed.GetRequiredValue(subject),
            Type = parsed.GetRequiredValue(type),
            Value = parsed.GetRequiredValue(value),
            Unit = parsed.GetRequiredValue(unit),
            Accuracy = parsed.GetRequiredValue(accuracy),
            Method = parsed.GetRequiredValue(method),
        }), measurement => measurement.Id)));
        return command;
    }

    private static Option<string> Words(string name, string description) => new(name) { Description = description, DefaultValueFactory = _ => "" };

    private static Option<double?> Number(string name, string description) => new(name) { Description = description };

    private static Option<DateTimeOffset?> Moment(string name, string description) => new(name) { Description = description };
}

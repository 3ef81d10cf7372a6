using System.Text;
using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Validation;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class BoatJsonRefusalTests
{
    [Theory]
    [InlineData("\"ambientC\": 25", "\"ambientF\": 77", "things[2] 'engine-room' /ambientF", "ambientF", "degrees Celsius are wanted: ambientC")]
    [InlineData("\"lengthM\": 1.2", "\"lengthFt\": 4", "things[7] 'feed' /lengthFt", "lengthFt", "metres are wanted: lengthM")]
    [InlineData("\"lengthM\": 1.2", "\"lenghtM\": 1.2", "things[7] 'feed' /lenghtM", "lenghtM", "lengthM is nearest")]
    [InlineData("\"lengthM\": 1.2", "\"a/b~c\": 1.2", "things[7] 'feed' /a~1b~0c", "a/b~c", "There is no field")]
    [InlineData("\"kind\": \"space\"", "\"kind\": \"spaces\"", "things[2] 'engine-room' /kind", "spaces", "no such kind")]
    [InlineData("\"kind\": \"space\",", "", "things[2] 'engine-room' /kind", "nothing", "does not say what kind")]
    [InlineData("\"nominalV\": 12.8,", "", "things[4] 'bank' /nominalV", "nothing", "Nominal is missing")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": null,", "things[4] 'bank' /nominalV", "null", "leave the field out")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": true,", "things[4] 'bank' /nominalV", "true", "wrong type")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": \"12.8\",", "things[4] 'bank' /nominalV", "the text \"12.8\"", "a text where a number is wanted")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": \"NaN\",", "things[4] 'bank' /nominalV", "NaN", "a text where a number is wanted")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": 1e999,", "things[4] 'bank' /nominalV", "V", "not a finite number")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": 12.8, \"nominalV\": 12.8,", "things[4] 'bank' /nominalV", "twice", "more than once")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": {\"value\":12800,\"unit\":\"mV\"},", "things[4] 'bank' /nominalV/unit", "mV", "always in volts")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": {\"known\":\"sheet\"},", "things[4] 'bank' /nominalV/value", "nothing", "Value is missing")]
    [InlineData("\"massKg\": 31", "\"massKg\": -0.001", "things[4] 'bank' /massKg", "-0.001 kg", "outside its range")]
    [InlineData("\"massKg\": 31", "\"massKg\": 10000.01", "things[4] 'bank' /massKg", "10000.01 kg", "outside its range")]
    [InlineData("\"plusMinus\":4", "\"plusMinus\":-4", "things[4] 'bank' /capacityAh/plusMinus", "-4", "outside its range")]
    [InlineData("\"known\":\"measured\"", "\"known\":\"mesured\"", "things[4] 'bank' /capacityAh/known", "mesured", "none of its choices")]
    [InlineData("\"on\":\"2026-03-01\"", "\"on\":\"2026-02-30\"", "things[4] 'bank' /capacityAh/on", "2026-02-30", "not a day")]
    [InlineData("\"method\":\"capacity test\"", "\"method\":\" \"", "things[4] 'bank' /capacityAh/method", "' '", "blank")]
    [InlineData("\"builtYear\": 1978", "\"builtYear\": 1978.5", "things[0] 'particulars' /builtYear", "1978.5", "wrong type")]
    [InlineData("\"builtYear\": 1978", "\"builtYear\": 1799", "things[0] 'particulars' /builtYear", "1799", "outside its range")]
    [InlineData("\"builtYear\": 1978", "\"builtYear\": 99999999999", "things[0] 'particulars' /builtYear", "99999999999", "wrong type")]
    [InlineData("\"name\": \"Small boat\"", "\"name\": \"\\ud800\"", "things[0] 'particulars' /name", "\\ud800", "wrong type")]
    [InlineData("\"name\": \"Small boat\"", "\"name\": \"\\u0007\"", "things[0] 'particulars' /name", "cannot be printed", "cannot be kept")]
    [InlineData("\"id\": \"port-tray\"", "\"id\": \"Port tray\"", "things[3] 'Port tray' /id", "Port tray", "not an id")]
    [InlineData("\"id\": \"port-tray\"", "\"id\": \"1-tray\"", "things[3] '1-tray' /id", "1-tray", "not an id")]
    [InlineData("\"id\": \"pump-cable\"", "\"id\": \"feed\"", "things[8] 'feed' /id", "'feed' again", "same id")]
    [InlineData("{\"id\":\"minus\"", "{\"id\":\"plus\"", "things[8] 'pump-cable' /cores/1/id", "'plus' again", "same id")]
    [InlineData("{\"id\":\"minus\"", "{\"id\":\"Minus\"", "things[8] 'pump-cable' /cores/1/id", "'Minus'", "not an id")]
    [InlineData("\"to\":\"bank.-\"", "\"to\":\"bank\"", "things[8] 'pump-cable' /cores/1/to", "bank", "not a terminal")]
    [InlineData("\"to\":\"bank.-\"", "\"to\":\"bench.-\"", "things[8] 'pump-cable' /cores/1/to", "bench.-", "no part 'bench'")]
    [InlineData("\"to\":\"bank.-\"", "\"to\":\"bank.in\"", "things[8] 'pump-cable' /cores/1/to", "bank.in", "no terminal 'in'")]
    [InlineData("\"to\":\"bank.-\"", "\"to\":\"feed.plus@to\"", "things[8] 'pump-cable' /cores/1/to", "feed.plus@to", "has no terminals")]
    [InlineData("\"plus\": \"pump-cable.plus@to\"", "\"plus\": \"pump-cable.plus@end\"", "things[11] 'pump-voltage' /plus", "plus@end", "no terminal")]
    [InlineData("{\"way\":\"port-tray\",\"lengthM\":0.8}", "{\"way\":\"engine-room\",\"lengthM\":0.8}", "things[7] 'feed' /run/0/way", "a space", "is a space")]
    [InlineData("{\"way\":\"port-tray\",\"lengthM\":0.8}", "{\"way\":\"port-tray\",\"space\":\"engine-room\",\"lengthM\":0.8}", "things[7] 'feed' /run/0/space", "way and space", "not both")]
    [InlineData("{\"condition\":\"at-anchor\",\"dutyFraction\":0.1}", "{\"condition\":\"at-sea\",\"dutyFraction\":0.1}", "things[6] 'pump' /uses/0/condition", "at-sea", "no 'at-sea'")]
    [InlineData("{\"condition\":\"at-anchor\",\"dutyFraction\":0.1}", "{\"condition\":\"at-anchor\",\"dutyFraction\":1.01}", "things[6] 'pump' /uses/0/dutyFraction", "1.01", "outside its range")]
    [InlineData("{\"condition\":\"at-anchor\",\"dutyFraction\":0.1}", "7", "things[6] 'pump' /uses/0", "7", "wrong type")]
    [InlineData("\"openIn\": [\n        \"at-anchor\"", "\"openIn\": [\n        \"at-sea\"", "things[9] 'night-switch' /openIn/0", "at-sea", "no 'at-sea'")]
    [InlineData("\"of\": \"bank\"", "\"of\": \"bench\"", "things[10] 'bank-picture' /of", "bench", "no 'bench'")]
    [InlineData("\"sha256\": \"0123456789abcdef", "\"sha256\": \"0123456789ABCDEF", "things[10] 'bank-picture' /sha256", "64 letters", "not a SHA-256")]
    [InlineData("image/jpeg", "image/gif", "things[10] 'bank-picture' /mediaType", "image/gif", "not kept")]
    [InlineData("\"voltageV\": 12.4", "\"voltageV\": 12.4, \"currentA\": 1", "things[11] 'pump-voltage'", "voltageV and currentA", "one voltage or one current")]
    [InlineData("\"voltageV\": 12.4", "\"currentA\": 1", "things[11] 'pump-voltage'", "a current without an element", "read in one element")]
    [InlineData("\"minus\": \"pump.-\",", "", "things[11] 'pump-voltage'", "a voltage without two probes", "between two probes")]
    [InlineData("\"voltageV\": 12.4,", "", "things[11] 'pump-voltage'", "neither", "one voltage or one current")]
    [InlineData("\"runningW\": 60", "\"runningW\": 60, \"runningA\": 5", "things[6] 'pump' /runningA", "runningW and runningA", "not both")]
    [InlineData("{\"chargeFraction\":1,\"openCircuitV\":13.6}", "{\"chargeFraction\":0,\"openCircuitV\":13.6}", "things[4] 'bank' /openCircuit/1/chargeFraction", "0", "from empty to full")]
    [InlineData("{\"chargeFraction\":1,\"openCircuitV\":13.6}", "{\"chargeFraction\":1,\"openCircuitV\":9.9}", "things[4] 'bank' /openCircuit/1/openCircuitV", "9.9 V", "never falls")]
    [InlineData("\"to\": {\"xM\":4,\"yM\":1.5,\"zM\":1.9}", "\"to\": {\"xM\":4,\"yM\":1.5,\"zM\":0.2}", "things[2] 'engine-room' /to/zM", "0.2 m", "inside out")]
    [InlineData("\"becomes\": {\n            \"kind\": \"stock\",\n            \"id\": \"spare-fuse\"", "\"becomes\": {\n            \"kind\": \"stock\",\n            \"id\": \"other-fuse\"", "things[12] 'bigger-fuse' /edits/1/becomes/id", "other-fuse", "different ids")]
    [InlineData("\"becomes\": {\n            \"kind\": \"stock\",", "\"becomes\": {\n            \"kind\": \"alteration\",", "things[12] 'bigger-fuse' /edits/1/becomes/kind", "alteration", "cannot alter an alteration")]
    [InlineData("\"pieceCount\": 2", "\"pieceCount\": -2", "things[12] 'bigger-fuse' /edits/1/becomes/pieceCount", "-2", "outside its range")]
    [InlineData("\"on\":\"2026-04-29\",", "", "things[12] 'bigger-fuse' /ticks/0/on", "nothing", "On is missing")]
    [InlineData("\"formatVersion\": 1", "\"formatVersion\": 3", "boat /formatVersion", "version 3", "This file is of version 3, this program reads up to 1.")]
    [InlineData("\"formatVersion\": 1", "\"formatVersion\": \"1\"", "boat /formatVersion", "the text", "whole number")]
    [InlineData("\"formatVersion\": 1,", "", "boat /formatVersion", "nothing", "does not say which version")]
    [InlineData("\"formatVersion\": 1,", "\"formatVersion\": 1, \"boat\": 2,", "boat /boat", "boat", "no field boat")]
    public void Read_OneMistake_IsToldWithPlaceFoundAndAllowed(string piece, string by, string path, string found, string message)
    {
        BoatReadResult result = BoatJson.Read(SmallBoat.With(piece, by));

        Assert.Null(result.Boat);
        Problem problem = Assert.Single(result.Problems, problem => problem.Path == path);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Allowed);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData(" \n\t", "empty")]
    [InlineData("[]", "JSON but no boat")]
    [InlineData("12", "JSON but no boat")]
    [InlineData("{\n \"formatVersion\": NaN}", "not JSON from line 2, column 19 on")]
    [InlineData("{\"formatVersion\": 1,\n\n", "not JSON from line 3")]
    public void Read_NoBoatAtAll_IsToldOnce(string text, string message) =>
        Assert.Contains(message, Assert.Single(BoatJson.Read(text).Problems).Message, StringComparison.Ordinal);

    [Fact]
    public void Read_NestingTooDeep_IsToldWithItsLine()
    {
        string deep = string.Concat(Enumerable.Repeat("[", 40)) + string.Concat(Enumerable.Repeat("]", 40));

        Problem problem = Assert.Single(BoatJson.Read("{\"formatVersion\": 1,\n\"things\": " + deep + "}").Problems);
        Assert.Contains("too deep", problem.Message, StringComparison.Ordinal);
        Assert.Contains("line 2", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BytesThatAreNoText_AreRefused() =>
        Assert.Contains("UTF-8", Assert.Single(BoatJson.Read(Encoding.Latin1.GetBytes("{\"ä\": 1}")).Problems).Message, StringComparison.Ordinal);

    [Fact]
    public void Read_ManyMistakes_AreAllToldAtOnceInTheOrderOfTheFile()
    {
        string text = SmallBoat.With("\"to\":\"bank.-\"", "\"to\":\"bench.-\"")
            .Replace("\"massKg\": 31", "\"massKg\": -1", StringComparison.Ordinal)
            .Replace("\"builtYear\": 1978", "\"builtYear\": \"1978\"", StringComparison.Ordinal)
            .Replace("\"lengthM\": 1.2", "\"lengthFt\": 4", StringComparison.Ordinal);

        Assert.Equal(
            ["things[0] 'particulars' /builtYear", "things[4] 'bank' /massKg", "things[7] 'feed' /lengthFt", "things[8] 'pump-cable' /cores/1/to"],
            BoatJson.Read(text).Problems.Select(problem => problem.Path));
    }

    [Fact]
    public void Read_BrokenPart_IsNotToldAgainByWhatPointsAtIt() =>
        Assert.Single(BoatJson.Read(SmallBoat.With("\"kind\": \"battery\"", "\"kind\": \"batery\"")).Problems);

    [Fact]
    public void Read_EndlessName_IsShortened() =>
        Assert.True(BoatJson.Read(SmallBoat.With("\"lengthM\": 1.2", $"\"{new string('x', 5000)}\": 1.2")).Problems[0].Message.Length < 200);

    [Theory]
    [InlineData("particulars", "\"kind\": \"particulars\", \"id\": \"again\"")]
    [InlineData("practice", "\"kind\": \"practice\", \"id\": \"one\", \"basis\": \"owner\" }, { \"kind\": \"practice\", \"id\": \"two\", \"basis\": \"owner\"")]
    public void Read_SecondOfWhatIsOnce_IsRefused(string kind, string thing)
    {
        BoatReadResult result = BoatJson.Read(SmallBoat.With("\"things\": [\n    {\n      \"kind\": \"particulars\"", $"\"things\": [{{ {thing} }},\n    {{\n      \"kind\": \"particulars\""));

        Assert.Contains($"A boat has one {kind}.", Assert.Single(result.Problems).Message, StringComparison.Ordinal);
    }
}

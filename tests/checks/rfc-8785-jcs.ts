import { canonical } from '$lib/records';
import { published } from './published';

const read =
	'github.com/cyberphone/json-canonicalization (the author of the RFC), testdata: input, output, README.md';

const exactly = { absolute: 0, because: 'canonical text has one form, to the last character' };

const of = (input: string) => () => canonical(JSON.parse(input));

const ofDouble = (bits: string) => () => canonical(Buffer.from(bits, 'hex').readDoubleBE());

const french =
	'{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}';

export default [
	published('rfc-8785', 'JSON canonicalization: input and canonical text', {
		of: ['record'],
		unit: 'text',
		read,
		within: exactly,
		rows: [
			{
				where: 'arrays',
				expected: '[56,{"1":[],"10":null,"d":true}]',
				actual: of('[ 56, { "d": true, "10": null, "1": [ ] } ]')
			},
			{ where: 'french: no locale decides the order', expected: french, actual: of(french) },
			{
				where: 'structures',
				expected: '{"":"empty","1":{"\\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}',
				actual: of(
					'{"1":{"f":{"f":"hi","F":5} ,"\\n":56.0},"10":{ },"":"empty","a":{ },"111":[ { } ],"A":{ }}'
				)
			},
			{
				where: 'unicode: not normalised',
				expected: '{"Unnormalized Unicode":"\u1e0d\u0307"}',
				actual: of('{"Unnormalized Unicode":"\\u1e0d\\u0307"}')
			},
			{
				where: 'values',
				expected:
					'{"escaping":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}',
				actual: of(
					'{"numbers":[1E30,4.50,333333333.33333329,2e-3,0.000000000000000000000000001],"escaping":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}'
				)
			},
			{
				where: 'weird: keys in the order of their UTF-16 units',
				expected:
					'{"1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign","😂":"Smiley","\ufb33":"Hebrew Letter Dalet With Dagesh"}',
				actual: of(
					'{"\\u20ac":"Euro Sign","1":"One","\\u0080":"Control\\u007f","\\ud83d\\ude02":"Smiley","\\u00f6":"Latin Small Letter O With Diaeresis","\\ufb33":"Hebrew Letter Dalet With Dagesh","</script>":"Browser Challenge"}'
				)
			}
		]
	}),
	published('rfc-8785', 'JSON canonicalization: IEEE 754 double and its text', {
		of: ['record'],
		unit: 'text',
		read,
		within: exactly,
		rows: [
			{ where: '4340000000000001', expected: '9007199254740994', actual: ofDouble('4340000000000001') },
			{ where: '4340000000000002', expected: '9007199254740996', actual: ofDouble('4340000000000002') },
			{ where: '444b1ae4d6e2ef50', expected: '1e+21', actual: ofDouble('444b1ae4d6e2ef50') },
			{ where: '3eb0c6f7a0b5ed8d', expected: '0.000001', actual: ofDouble('3eb0c6f7a0b5ed8d') },
			{ where: '3eb0c6f7a0b5ed8c', expected: '9.999999999999997e-7', actual: ofDouble('3eb0c6f7a0b5ed8c') },
			{ where: '8000000000000000', expected: '0', actual: ofDouble('8000000000000000') },
			{ where: '0', expected: '0', actual: ofDouble('0000000000000000') }
		]
	})
];
